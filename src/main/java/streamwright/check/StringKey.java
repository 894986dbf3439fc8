package streamwright.check;

/** Names one string. */
record StringKey(String prop, int number) {}

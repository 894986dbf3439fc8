package streamwright.plan;

/** Power brought to a string: the stretch that it feeds begins at this 1-based pixel of the string. */
public record Injection(String prop, int string, int pixel) {}

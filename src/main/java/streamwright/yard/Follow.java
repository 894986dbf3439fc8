package streamwright.yard;

/** Which other strings may share a string's port. */
public enum Follow {
    NONE,
    PROP,
    ANY
}

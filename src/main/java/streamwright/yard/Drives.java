package streamwright.yard;

/** What hangs on a board. */
public enum Drives {
    PIXELS,
    OUTPUTS,
    PANEL
}

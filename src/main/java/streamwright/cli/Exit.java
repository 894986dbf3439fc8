package streamwright.cli;

/** What the exit status of every command means. */
final class Exit {
    static final int DONE = 0;
    /** The yard cannot be laid out, or the audit found a broken rule. */
    static final int BROKEN = 1;
    /** The command line or a file is wrong. */
    static final int WRONG = 2;
    /** Stopped before any plan was found, or by a fault of the program itself. */
    static final int STOPPED = 3;
    /** Interrupted; the best plan so far has been written. */
    static final int INTERRUPTED = 130;

    /** Nobody reads stdout any more: what a shell says of a program that the broken pipe ended (128 and SIGPIPE, 13). */
    static final int UNWANTED = 141;

    private Exit() {}
}

package streamwright.yard;

/** Minutes of work of each kind of change. Common practice, no source. */
public record Work(double setting, double replug, double lead, double hop, double board, double injection) {
    public static final Work DEFAULTS = new Work(1, 4, 15, 25, 20, 10);
}

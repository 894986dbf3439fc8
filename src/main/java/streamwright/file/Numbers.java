package streamwright.file;

/** The wide ranges of a plan file, which may be made by hand or broken: the audit judges its figures, not the reader. */
final class Numbers {
    static final Shape<Integer> WHOLE = Whole.of(Integer.MIN_VALUE, Integer.MAX_VALUE);
    static final Shape<Long> LONG = new Whole(Long.MIN_VALUE, Long.MAX_VALUE);
    static final Shape<Double> REAL = Numeral.anything();

    private Numbers() {}
}

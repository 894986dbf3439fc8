package streamwright.plan.change;

/** A string by its prop and its 1-based number there. */
public record StringId(String prop, int number) implements Comparable<StringId> {
    @Override
    public int compareTo(StringId other) {
        int byProp = prop.compareTo(other.prop);
        return byProp != 0 ? byProp : Integer.compare(number, other.number);
    }
}

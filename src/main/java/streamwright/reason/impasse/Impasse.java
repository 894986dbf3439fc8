package streamwright.reason.impasse;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Outcome;

/**
 * Why a yard cannot be laid out; as JSON an object of these fields.
 *
 * @param status {@code impossible} where it is proved that no plan exists, else {@code unknown}
 * @param clash rules and things that cannot go together; null where nothing is proved
 * @param waysOut changes of the yard with which a plan was found, the cheapest plan first
 * @param arithmetic conditions that every plan meets and this yard does not, each with its figure and limit
 */
public record Impasse(
        String yard,
        String status,
        List<Figure> arithmetic,
        @Nullable Clash clash,
        List<WayOut> waysOut) {
    private static final String IMPOSSIBLE = "impossible";
    private static final String UNKNOWN = "unknown";

    public Impasse {
        arithmetic = List.copyOf(arithmetic);
        waysOut = List.copyOf(waysOut);
    }

    /**
     * A condition that is not met.
     *
     * @param rule its name in the audit
     * @param about a string as people say it, or {@code yard}
     * @param figure what is needed
     * @param limit what there is
     */
    public record Figure(String rule, String about, double figure, double limit, String text) {
        static Figure of(Outcome.Obstruction obstruction) {
            return new Figure(
                    obstruction.rule().label(),
                    obstruction.about(),
                    obstruction.figure(),
                    obstruction.limit(),
                    obstruction.text());
        }
    }

    /** Of a yard that is proved to have no plan. */
    static Impasse impossible(String yard, List<Outcome.Obstruction> obstructions) {
        return new Impasse(
                yard, IMPOSSIBLE, obstructions.stream().map(Figure::of).toList(), null, List.of());
    }

    /** Of a yard for which no plan was found, and none is proved impossible. */
    public static Impasse unknown(String yard) {
        return new Impasse(yard, UNKNOWN, List.of(), null, List.of());
    }

    Impasse with(Clash found) {
        return new Impasse(yard, IMPOSSIBLE, arithmetic, found, waysOut);
    }

    Impasse with(List<WayOut> found) {
        return new Impasse(yard, status, arithmetic, clash, found);
    }

    public boolean proved() {
        return status.equals(IMPOSSIBLE);
    }
}

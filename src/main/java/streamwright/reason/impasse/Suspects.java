package streamwright.reason.impasse;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import streamwright.plan.Rule;
import streamwright.solve.Outcome;

/**
 * What arithmetic points at: all else is let go first, in one step where that can be. It says only in which order to
 * try, and proves nothing.
 */
final class Suspects {
    private static final List<String> LENGTHS = List.of("rules.", "boards hang", "obstacle ");
    private static final List<String> NUMBERS =
            List.of("follow ", "boardCount.", "boards", "spots: ", "board ", "controller ");
    private static final List<String> POWER =
            List.of("brightness ", "board ", "spots: ", "boards hang", "pixel ", "rules.");

    /** Of each rule, with what the words of limits begin that it has to do with. */
    private static final Map<Rule, List<String>> BEGINS = new EnumMap<>(Rule.class);

    static {
        BEGINS.put(Rule.STREAM_LIMIT, List.of("frameRate ", "spare ", "controller "));
        BEGINS.put(Rule.CHANNEL_RANGE, List.of("channels: ", "controller "));
        BEGINS.put(Rule.CHANNEL_KEEP, List.of("channels: ", "rules."));
        BEGINS.put(Rule.PORT_PIXELS, List.of("board "));
        BEGINS.put(Rule.PORT_ONCE, List.of());
        List.of(Rule.LEAD_NULLS, Rule.HOP_LENGTH, Rule.CABLE_LENGTH, Rule.OBSTACLE)
                .forEach(rule -> BEGINS.put(rule, LENGTHS));
        List.of(
                        Rule.BOARD_COUNT,
                        Rule.BOARD_MOST,
                        Rule.SPOT_MOST,
                        Rule.BOARDS_PER_CABLE,
                        Rule.ID_UNIQUE,
                        Rule.UNADDRESSED_ALONE)
                .forEach(rule -> BEGINS.put(rule, NUMBERS));
        List.of(Rule.FUSE, Rule.VOLTS, Rule.BOARD_AMPS, Rule.SPOT_AMPS).forEach(rule -> BEGINS.put(rule, POWER));
    }

    private Suspects() {}

    /** Limits that the first of the conditions not met speaks of; all where there is none. */
    static Predicate<Claim> limits(List<Outcome.Obstruction> obstructions) {
        if (obstructions.isEmpty()) {
            return claim -> true;
        }
        List<String> begins = BEGINS.getOrDefault(obstructions.get(0).rule(), List.of(""));
        return claim -> begins.stream().anyMatch(claim.words()::startsWith);
    }

    /** Props that it speaks of; all where it speaks of the yard. */
    static Predicate<Claim> props(List<Outcome.Obstruction> obstructions) {
        if (obstructions.isEmpty() || obstructions.get(0).about().equals("yard")) {
            return claim -> true;
        }
        String about = Things.PROP + obstructions.get(0).about();
        return claim -> about.equals(claim.words()) || about.startsWith(claim.words() + " ");
    }
}

package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/**
 * Rules and things that cannot go together.
 *
 * @param limits as the yard file has them
 * @param things props, or strings of them
 * @param smallest whether it is proved of each of them that there is a plan for all others
 * @param open those of which the time did not suffice to prove it
 */
public record Clash(List<String> limits, List<String> things, boolean smallest, List<String> open, String text) {
    public Clash {
        limits = List.copyOf(limits);
        things = List.copyOf(things);
        open = List.copyOf(open);
    }

    /** What a clash is made of. */
    record Parts(List<Claim> limits, List<Claim> things) {}

    private static Clash told(Yard yard, Parts parts, List<Claim> open) {
        List<String> limits = parts.limits.stream().map(Claim::words).toList();
        List<String> things = grouped(yard, parts.things);
        List<String> doubtful =
                open.stream().filter(parts.limits::contains).map(Claim::words).collect(Collectors.toList());
        doubtful.addAll(
                grouped(yard, open.stream().filter(parts.things::contains).toList()));
        Clash clash = new Clash(limits, things, doubtful.isEmpty(), doubtful, "");
        String all = Stream.concat(limits.stream(), things.stream()).collect(Collectors.joining("; "));
        return new Clash(
                limits, things, clash.smallest, doubtful, "These cannot all hold: " + all + ". " + clash.left());
    }

    /** What is known of a yard with one of them left out. */
    public String left() {
        if (!smallest) {
            return "Whether there is a plan without one of these was not found out in the time: "
                    + String.join("; ", open) + ".";
        }
        return limits.size() + things.size() == 1
                ? "Without it there is a plan for the rest."
                : "Leave out any one of them, and there is a plan for the others.";
    }

    /** Strings by their prop. */
    private static List<String> grouped(Yard yard, List<Claim> things) {
        Map<String, List<String>> strings = new LinkedHashMap<>();
        List<String> words = new ArrayList<>();
        for (Claim thing : things) {
            var of = yard.props().stream()
                    .flatMap(prop -> prop.strings().stream())
                    .filter(string -> string.label(true).equals(thing.words()))
                    .findFirst();
            if (of.isEmpty()) {
                words.add(thing.words());
            } else {
                strings.computeIfAbsent(of.get().prop(), prop -> new ArrayList<>())
                        .add(String.valueOf(of.get().number()));
            }
        }
        for (var prop : yard.props()) {
            List<String> some = strings.get(prop.id());
            if (some != null) {
                words.add(
                        some.size() == prop.strings().size()
                                ? "prop " + prop.id() + " (" + some.size() + " strings)"
                                : some.size() + " of the " + prop.strings().size() + " strings of prop " + prop.id()
                                        + " (" + String.join(", ", some) + ")");
            }
        }
        return words;
    }

    /** What of a yard clashes. */
    record Found(Clash clash, Parts parts) {}

    /**
     * Finds a smallest clash, as far as the time allows.
     *
     * @param yard without a plan, which is proved
     * @param obstructions by arithmetic
     */
    static Found of(Yard yard, List<Outcome.Obstruction> obstructions, Oracle oracle) {
        Shrinking shrinking = new Shrinking(oracle, Things.pinned(yard));
        List<Claim> limits = shrinking.needed(Limits.of(yard), Suspects.limits(obstructions));
        // with fewer things fewer boards can be hung: then things are no part of what forbids a plan
        boolean tooFew = limits.stream().anyMatch(claim -> claim.words().startsWith("boardCount.least "));
        List<Claim> things = new ArrayList<>();
        if (!tooFew) {
            for (Claim prop : shrinking.needed(Things.props(yard), Suspects.props(obstructions))) {
                List<Claim> strings = Things.strings(yard, Things.propOf(yard, prop));
                things.addAll(strings.isEmpty() ? List.of(prop) : shrinking.needed(strings));
            }
        }
        List<Claim> all = shrinking.confirmed(
                Stream.concat(limits.stream(), things.stream()).toList());
        Parts parts = new Parts(
                limits.stream().filter(all::contains).toList(),
                things.stream()
                        .filter(all::contains)
                        .sorted(Things.inFile(yard))
                        .toList());
        List<Claim> open = all.stream().filter(shrinking::open).toList();
        return new Found(told(yard, parts, open), parts);
    }
}

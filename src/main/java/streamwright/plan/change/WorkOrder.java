package streamwright.plan.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Change;

/** Puts pieces of work into an order that a crew can work, and says at each step what stays dark until which other. */
final class WorkOrder {
    private final List<Piece> pieces;
    private final Map<String, String> broken;
    private final Function<StringId, String> say;

    private WorkOrder(List<Piece> pieces, Map<String, String> broken, Function<StringId, String> say) {
        this.pieces = pieces.stream().sorted(Comparator.comparing(Piece::phase)).toList();
        this.broken = broken;
        this.say = say;
    }

    static List<Change> of(List<Piece> pieces, Map<String, String> broken, Function<StringId, String> say) {
        return new WorkOrder(pieces, broken, say).changes();
    }

    private List<Change> changes() {
        // steps are counted from 1
        Map<StringId, Integer> from = new HashMap<>();
        Map<StringId, Integer> until = new HashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            int step = i + 1;
            pieces.get(i).darkens().forEach(string -> from.putIfAbsent(string, step));
            pieces.get(i).serves().forEach(string -> until.put(string, step));
        }
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            String text = piece.text() + why(piece) + dark(i + 1, from, until) + lit(i + 1, from, until);
            changes.add(new Change(piece.kind(), piece.what(), piece.from(), piece.to(), piece.minutes(), text));
        }
        return changes;
    }

    private String why(Piece piece) {
        for (String about : piece.about()) {
            @Nullable String wrong = broken.get(about);
            if (wrong != null) {
                return " Why: " + wrong + ".";
            }
        }
        return "";
    }

    /** What goes dark at a step and stays so over other steps. */
    private static String joined(Map<Integer, Set<StringId>> byStep, String words, Function<StringId, String> say) {
        StringBuilder text = new StringBuilder();
        byStep.forEach((step, strings) ->
                text.append(words.formatted(Spell.capital(Spell.strings(strings, say)), stay(strings), step)));
        return text.toString();
    }

    private static String stay(Set<StringId> strings) {
        return strings.size() == 1 ? "stays" : "stay";
    }

    private String dark(int step, Map<StringId, Integer> from, Map<StringId, Integer> until) {
        Map<Integer, Set<StringId>> byEnd = new TreeMap<>();
        from.forEach((string, begin) -> {
            int end = until.getOrDefault(string, 0);
            if (begin == step && end > step) {
                byEnd.computeIfAbsent(end, e -> new TreeSet<>()).add(string);
            }
        });
        return joined(byEnd, " %s %s dark until step %d.", say);
    }

    /** What shines (again) from a step on, and can be tested. */
    private String lit(int step, Map<StringId, Integer> from, Map<StringId, Integer> until) {
        Set<StringId> lit = new TreeSet<>();
        until.forEach((string, end) -> {
            if (end == step && from.getOrDefault(string, 0) != step) {
                lit.add(string);
            }
        });
        return lit.isEmpty() ? "" : " Test now: " + Spell.strings(lit, say) + ".";
    }
}

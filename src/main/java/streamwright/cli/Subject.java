package streamwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.Reason.About;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** What can be asked about, by the names that people use; the earlier meaning of a name wins. */
final class Subject {
    private Subject() {}

    /**
     * Tells which reasons are about a thing: a prop ({@code gable}), one of its strings ({@code gable 2}), a board
     * ({@code B3}), a cable ({@code shed 1}, or {@code cable 1} where there is one controller) or the {@code yard}.
     *
     * @throws Wrong if the plan has nothing of that name
     */
    static Predicate<About> of(String what, Yard yard, Plan plan) {
        Map<String, Predicate<About>> known = known(yard, plan);
        Predicate<About> exact = known.get(what);
        if (exact != null) {
            return exact;
        }
        return known.entrySet().stream()
                .filter(each -> each.getKey().toLowerCase(Locale.ROOT).equals(what.toLowerCase(Locale.ROOT)))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new Wrong(Words.unknown("prop, string, board or cable", what, known.keySet())));
    }

    private static Map<String, Predicate<About>> known(Yard yard, Plan plan) {
        Map<String, Predicate<About>> known = new LinkedHashMap<>();
        for (Prop prop : yard.props()) {
            known.putIfAbsent(prop.id(), about -> prop.id().equals(about.prop()));
        }
        for (Board board : plan.boards()) {
            known.putIfAbsent(board.id(), About.board(board.id())::equals);
        }
        for (Cable cable : plan.cables()) {
            Predicate<About> same = About.cable(cable.controller(), cable.jack())::equals;
            known.putIfAbsent(cable.controller() + " " + cable.jack(), same);
            if (yard.controllers().size() == 1) {
                known.putIfAbsent("cable " + cable.jack(), same);
            }
        }
        for (Prop prop : yard.props()) {
            for (PixelString string : prop.strings()) {
                known.putIfAbsent(string.label(true), About.string(prop.id(), string.number())::equals);
            }
        }
        known.putIfAbsent("yard", about -> about.yard() != null);
        return known;
    }
}

package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * Counts the work between two plans again, from the words of the contract and from the plans' own fields, as text keys.
 *
 * @param structure minutes of leads, replugs, hops, boards and injections
 * @param settings minutes of settings
 */
record Recount(double structure, double settings) {
    double minutes() {
        return structure + settings;
    }

    static Recount of(Yard yard, Plan before, Plan after) {
        Work work = yard.work();
        Map<String, Board> was = boards(before);
        Map<String, Board> now = boards(after);
        double structure = 0;
        double settings = 0;
        for (String name : was.keySet()) {
            if (!now.containsKey(name)) {
                structure += work.board();
            }
        }
        for (Map.Entry<String, Board> entry : now.entrySet()) {
            Board old = was.get(entry.getKey());
            if (old == null || !old.at().equals(entry.getValue().at())) {
                structure += work.board();
            } else {
                settings += Objects.equals(old.boardId(), entry.getValue().boardId()) ? 0 : work.setting();
            }
        }
        Map<String, List<String>> wasOn = strings(before);
        for (Map.Entry<String, List<String>> entry : strings(after).entrySet()) {
            structure +=
                    string(work, wasOn.get(entry.getKey()), entry.getValue().get(0));
        }
        Map<String, List<String>> fittedOn = fittings(before);
        for (Map.Entry<String, List<String>> entry : fittings(after).entrySet()) {
            structure +=
                    fitting(work, fittedOn.get(entry.getKey()), entry.getValue().get(0));
        }
        structure += work.hop() * hops(yard, before, after, now);
        Set<String> injected = injections(before);
        structure += work.injection()
                * injections(after).stream()
                        .filter(each -> !injected.contains(each))
                        .count();
        for (Map.Entry<String, Board> entry : now.entrySet()) {
            Board old = was.get(entry.getKey());
            if (old != null && old.at().equals(entry.getValue().at())) {
                settings += work.setting() * (ports(old, entry.getValue()) + blocks(old, entry.getValue()));
            }
        }
        settings += work.setting() * windows(before, after);
        return new Recount(structure, settings);
    }

    private static Map<String, Board> boards(Plan plan) {
        Map<String, Board> boards = new HashMap<>();
        plan.boards().forEach(board -> boards.put(board.id() + "/" + board.model(), board));
        return boards;
    }

    /** Of each string its places, as board, port and what goes before it. */
    private static Map<String, List<String>> strings(Plan plan) {
        Map<String, List<String>> strings = new HashMap<>();
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                String behind = "first";
                for (var use : port.strings()) {
                    String name = use.prop() + "#" + use.string();
                    strings.computeIfAbsent(name, key -> new ArrayList<>())
                            .add(board.id() + "/" + board.model() + "|" + behind + "|" + port.port());
                    behind = name;
                }
            }
        }
        return strings;
    }

    private static double string(Work work, @Nullable List<String> before, String now) {
        if (before == null) {
            return work.lead();
        }
        if (before.contains(now)) {
            return 0;
        }
        String alike = now.substring(0, now.lastIndexOf('|') + 1);
        return before.stream().anyMatch(each -> each.startsWith(alike)) ? work.replug() : work.lead();
    }

    /** Of each prop of outputs and each panel its places, as board and outputs. */
    private static Map<String, List<String>> fittings(Plan plan) {
        Map<String, List<String>> fittings = new HashMap<>();
        for (Board board : plan.boards()) {
            Map<String, Set<Integer>> outputs = new HashMap<>();
            if (board.outputs() != null) {
                board.outputs()
                        .lines()
                        .forEach(line -> outputs.computeIfAbsent(line.prop(), key -> new TreeSet<>())
                                .add(line.output()));
            }
            board.panels().forEach(panel -> outputs.put(panel.prop(), Set.of()));
            outputs.forEach((prop, lines) -> fittings.computeIfAbsent(prop, key -> new ArrayList<>())
                    .add(board.id() + "/" + board.model() + "|" + lines));
        }
        return fittings;
    }

    private static double fitting(Work work, @Nullable List<String> before, String now) {
        if (before != null && before.contains(now)) {
            return 0;
        }
        String board = now.substring(0, now.lastIndexOf('|') + 1);
        return before != null && before.stream().anyMatch(each -> each.startsWith(board)) ? work.replug() : work.lead();
    }

    /** Blocks with the props that they had and parts of panels that begin elsewhere. */
    private static long blocks(Board old, Board now) {
        long set = 0;
        Outputs was = old.outputs();
        Outputs is = now.outputs();
        if (was != null && is != null && props(was).equals(props(is))) {
            set += was.stream() != is.stream() || was.startPixel() != is.startPixel() ? 1 : 0;
        }
        for (PanelUse panel : now.panels()) {
            for (PanelUse before : old.panels()) {
                for (int p = 0;
                        before.prop().equals(panel.prop()) && p < panel.parts().size();
                        p++) {
                    PanelUse.Part a = before.parts().get(p);
                    PanelUse.Part b = panel.parts().get(p);
                    set += a.stream() != b.stream() || a.startPixel() != b.startPixel() ? 1 : 0;
                }
            }
        }
        return set;
    }

    private static Set<String> props(Outputs block) {
        return block.lines().stream().map(Outputs.Line::prop).collect(Collectors.toSet());
    }

    private static Set<Set<String>> pairs(Plan plan) {
        Map<String, String> models = new HashMap<>();
        plan.boards().forEach(board -> models.put(board.id(), board.id() + "/" + board.model()));
        Set<Set<String>> pairs = new HashSet<>();
        for (Cable cable : plan.cables()) {
            String from = "jack " + cable.controller() + " " + cable.jack();
            for (String name : cable.boards()) {
                String to = models.getOrDefault(name, name + "/nothing");
                pairs.add(Set.of(from, to));
                from = to;
            }
        }
        return pairs;
    }

    private static long hops(Yard yard, Plan before, Plan after, Map<String, Board> now) {
        Set<Set<String>> was = pairs(before);
        Set<Set<String>> is = pairs(after);
        long laid = is.stream().filter(pair -> !was.contains(pair)).count();
        Set<String> jacks = new HashSet<>();
        yard.controllers().forEach(controller -> {
            for (int j = 1; j <= controller.model().jacks(); j++) {
                jacks.add("jack " + controller.id() + " " + j);
            }
        });
        long off = was.stream()
                .filter(pair -> !is.contains(pair))
                .filter(pair -> pair.stream().allMatch(end -> jacks.contains(end) || now.containsKey(end)))
                .count();
        return laid + off;
    }

    /** Each with the board whose supply it comes from. */
    private static Set<String> injections(Plan plan) {
        Set<String> all = new HashSet<>();
        plan.boards()
                .forEach(board -> board.ports()
                        .forEach(port -> port.injections()
                                .forEach(each -> all.add(board.id() + "/" + board.model() + "|" + each))));
        return all;
    }

    private static List<String> names(PortUse port) {
        return port.strings().stream()
                .map(use -> use.prop() + "#" + use.string())
                .toList();
    }

    private static long ports(Board old, Board now) {
        long set = 0;
        for (PortUse port : now.ports()) {
            for (PortUse was : old.ports()) {
                boolean same = was.port() == port.port() && names(was).equals(names(port));
                set += same && (was.startPixel() != port.startPixel() || was.stream() != port.stream()) ? 1 : 0;
            }
        }
        return set;
    }

    private static Map<String, Set<String>> carried(Plan plan) {
        Map<String, Set<String>> carried = new HashMap<>();
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                carried.computeIfAbsent(
                                board.controller() + " " + board.jack() + " " + port.stream(), key -> new HashSet<>())
                        .addAll(names(port));
            }
            String cable = board.controller() + " " + board.jack() + " ";
            Outputs block = board.outputs();
            if (block != null) {
                carried.computeIfAbsent(cable + block.stream(), key -> new HashSet<>())
                        .addAll(props(block));
            }
            for (PanelUse panel : board.panels()) {
                panel.parts()
                        .forEach(part -> carried.computeIfAbsent(cable + part.stream(), key -> new HashSet<>())
                                .add(panel.prop()));
            }
        }
        return carried;
    }

    private static long windows(Plan before, Plan after) {
        Map<String, StreamUse> was = new HashMap<>();
        before.cables()
                .forEach(cable -> cable.streams()
                        .forEach(use -> was.put(cable.controller() + " " + cable.jack() + " " + use.stream(), use)));
        Map<String, Set<String>> carriedBefore = carried(before);
        Map<String, Set<String>> carriedAfter = carried(after);
        long set = 0;
        for (Cable cable : after.cables()) {
            for (StreamUse use : cable.streams()) {
                String key = cable.controller() + " " + cable.jack() + " " + use.stream();
                StreamUse old = was.get(key);
                if (old == null
                        || !carriedBefore
                                .getOrDefault(key, Set.of())
                                .equals(carriedAfter.getOrDefault(key, Set.of()))) {
                    continue;
                }
                set += old.startChannel() != use.startChannel() || old.pixels() != use.pixels() ? 1 : 0;
            }
        }
        return set;
    }
}

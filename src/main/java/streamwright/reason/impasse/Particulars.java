package streamwright.reason.impasse;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import streamwright.physics.Runs;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.StringUse;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Of a plan for a changed yard: what in it would not have been possible before. */
final class Particulars {
    private static final int TOLD = 6;

    private final Yard yard;
    private final Plan plan;

    /** @param yard as it is */
    Particulars(Yard yard, Plan plan) {
        this.yard = yard;
        this.plan = plan;
    }

    /** @param fields that are changed */
    String of(List<String> fields) {
        StringBuilder text = new StringBuilder();
        for (String field : fields) {
            switch (field) {
                case "boardCount.most" -> text.append(boards());
                case "rules.leadData", "rules.jumperData", "rules.nullsMost" -> text.append(leads());
                case "rules.hopMost" -> text.append(hops());
                case "rules.cableMost" -> text.append(cables());
                default -> {}
            }
        }
        return text.toString();
    }

    private String length(double length) {
        return String.format(Locale.ROOT, "%.2f %s", length, yard.units().symbol());
    }

    private static String list(String before, List<String> all) {
        if (all.isEmpty()) {
            return "";
        }
        String more = all.size() > TOLD ? " and " + (all.size() - TOLD) + " more" : "";
        return "; " + before + all.stream().limit(TOLD).collect(Collectors.joining(", ")) + more;
    }

    private String boards() {
        List<String> places =
                plan.boards().stream().map(Particulars::place).distinct().toList();
        return list("boards at ", places);
    }

    private static String place(Board board) {
        return board.spot() != null
                ? board.spot()
                : "(" + Lever.plain(board.at().x()) + ", "
                        + Lever.plain(board.at().y()) + ")";
    }

    private String label(StringUse string) {
        boolean several = yard.props().stream()
                .filter(prop -> prop.id().equals(string.prop()))
                .anyMatch(Prop::several);
        return several ? string.prop() + " " + string.string() : string.prop();
    }

    private String leads() {
        double most = Runs.leadMost(yard.rules());
        List<String> longer = plan.boards().stream()
                .flatMap(board -> board.ports().stream())
                .map(port -> port.strings().get(0))
                .filter(string -> string.length() > most + 1e-6)
                .map(string -> label(string) + " " + length(string.length()))
                .toList();
        return list("longer leads: ", longer);
    }

    private String hops() {
        List<String> longer = plan.cables().stream()
                .flatMap(cable -> cable.hops().stream())
                .filter(hop -> hop > yard.rules().hopMost() + 1e-6)
                .map(this::length)
                .toList();
        return list("longer hops: ", longer);
    }

    private String cables() {
        List<String> longer = plan.cables().stream()
                .map(Cable::length)
                .filter(length -> length > yard.rules().cableMost() + 1e-6)
                .map(this::length)
                .toList();
        return list("longer cables: ", longer);
    }
}

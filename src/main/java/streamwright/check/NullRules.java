package streamwright.check;

import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.Prop;
import streamwright.yard.Rules;

/** Null pixels in leads and jumpers: as many as the length needs, and no more. */
final class NullRules {
    /** How far a length may be over a step and still be under it; the other way only for the last bits. */
    private static final double OVER = 1e-6;

    private static final double ROUNDING = 1e-9;

    private final Survey survey;
    private final Rules rules;
    private final String unit;
    private final Faults faults;

    private NullRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
        rules = survey.yard.rules();
        unit = survey.yard.units().symbol();
    }

    static void audit(Survey survey, Faults faults) {
        NullRules group = new NullRules(survey, faults);
        for (SeenBoard board : survey.boards) {
            for (SeenPort port : board.ports()) {
                port.strings().forEach(group::string);
            }
            board.board().panels().forEach(panel -> group.panel(board, panel));
        }
    }

    private void string(SeenString on) {
        if (Double.isNaN(on.way())) {
            return;
        }
        double least = nulls(on.way() - OVER, on.lead());
        double most = nulls(on.way() + ROUNDING, on.lead());
        int nulls = on.use().nulls();
        String wire = (on.lead() ? "a lead of " : "a jumper of ") + Say.number(on.way()) + " " + unit;
        if (least > rules.nullsMost()) {
            double longest = rules.jumperData() * (rules.nullsMost() + (on.lead() ? 0.0 : 1.0))
                    + (on.lead() ? rules.leadData() : 0);
            String text = wire + ", but " + Say.number(longest) + " " + unit + " is the longest with the "
                    + Say.count(rules.nullsMost(), "null pixel", "null pixels") + " allowed";
            faults.add(Rule.LEAD_NULLS, on.label(), Math.min(least, Integer.MAX_VALUE), rules.nullsMost(), text);
        } else if (nulls < least || nulls > most) {
            String text =
                    wire + " needs " + Say.count((long) least, "null pixel", "null pixels") + ", but has " + nulls;
            faults.add(Rule.LEAD_NULLS, on.label(), nulls, least, text);
        }
    }

    /** That a wire of a length needs. */
    private double nulls(double length, boolean lead) {
        double beyond = lead ? length - rules.leadData() : length - rules.jumperData();
        return beyond <= 0 ? 0 : Math.ceil(beyond / rules.jumperData());
    }

    private void panel(SeenBoard board, PanelUse use) {
        Prop prop = survey.index.props.get(use.prop());
        if (prop == null || prop.panel() == null || prop.at() == null) {
            return;
        }
        double way = survey.lengths.lead(board.at(), prop.at());
        if (Near.over(way, rules.leadData())) {
            String text = "a lead of " + Say.over(way, rules.leadData(), unit) + " from " + board.label();
            faults.add(Rule.LEAD_NULLS, use.prop(), way, rules.leadData(), text);
        }
    }
}

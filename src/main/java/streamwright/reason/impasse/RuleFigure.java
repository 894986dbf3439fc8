package streamwright.reason.impasse;

import java.util.function.ToDoubleFunction;
import streamwright.yard.Rules;

/** The figures of a yard's rules, each of which could be another. */
enum RuleFigure {
    LEAD_DATA("leadData", Rules::leadData),
    JUMPER_DATA("jumperData", Rules::jumperData),
    NULLS_MOST("nullsMost", Rules::nullsMost),
    HOP_MOST("hopMost", Rules::hopMost),
    CABLE_MOST("cableMost", Rules::cableMost),
    SLACK("slack", Rules::slack),
    TRUNK_LOOP("trunkLoop", Rules::trunkLoop),
    LEAD_LOOP("leadLoop", Rules::leadLoop),
    LEAD_WIRE("leadWire.mm2", Rules::leadWireMm2),
    INJECTION_WIRE("injectionWire.mm2", Rules::injectionWireMm2),
    WIRE_FACTOR("wireFactor", Rules::wireFactor),
    CONNECTOR("connector", Rules::connector),
    FUSE_LOAD("fuseLoad", Rules::fuseLoad);

    private final String field;

    @SuppressWarnings("ImmutableEnumChecker") // a reference to a method of a record
    private final ToDoubleFunction<Rules> figure;

    RuleFigure(String name, ToDoubleFunction<Rules> figure) {
        field = "rules." + name;
        this.figure = figure;
    }

    /** As the yard file names it. */
    String field() {
        return field;
    }

    double of(Rules rules) {
        return figure.applyAsDouble(rules);
    }

    /** The same rules but for this figure. */
    Rules with(Rules was, double value) {
        ToDoubleFunction<RuleFigure> now = each -> each == this ? value : each.of(was);
        return new Rules(
                now.applyAsDouble(LEAD_DATA),
                now.applyAsDouble(JUMPER_DATA),
                (int) Math.round(now.applyAsDouble(NULLS_MOST)),
                now.applyAsDouble(HOP_MOST),
                now.applyAsDouble(CABLE_MOST),
                now.applyAsDouble(SLACK),
                now.applyAsDouble(TRUNK_LOOP),
                now.applyAsDouble(LEAD_LOOP),
                now.applyAsDouble(LEAD_WIRE),
                now.applyAsDouble(INJECTION_WIRE),
                now.applyAsDouble(WIRE_FACTOR),
                now.applyAsDouble(CONNECTOR),
                now.applyAsDouble(FUSE_LOAD));
    }
}

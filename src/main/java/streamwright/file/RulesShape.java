package streamwright.file;

import java.util.function.Function;
import streamwright.yard.Rules;
import streamwright.yard.Units;

/** The yard's rules; what is not given is the default in the yard's units. */
final class RulesShape extends Struct<Function<Units, Rules>> {
    private static final Rules METRES = Rules.defaults(Units.M);

    private final Field<Double> leadData = length("leadData", METRES.leadData(), "longest lead without a null pixel");
    private final Field<Double> jumperData =
            length("jumperData", METRES.jumperData(), "longest way from pixel to pixel");
    private final Field<Integer> nullsMost =
            optional("nullsMost", Whole.of(0, 1_000_000), METRES.nullsMost(), "most null pixels in one lead or jumper");
    private final Field<Double> hopMost = length("hopMost", METRES.hopMost(), "longest hop");
    private final Field<Double> cableMost = length("cableMost", METRES.cableMost(), "longest cable");
    private final Field<Double> slack =
            optional("slack", new Numeral(1, false, 1000), METRES.slack(), "every run is this many times its path");
    private final Field<Double> trunkLoop =
            length("trunkLoop", METRES.trunkLoop(), "added at each of the two ends of a hop");
    private final Field<Double> leadLoop = length("leadLoop", METRES.leadLoop(), "added to a lead or jumper");
    private final Field<Double> leadWire =
            optional("leadWire", new Wire("of one conductor"), "of leads and jumpers; default " + METRES.leadWireMm2());
    private final Field<Double> injectionWire =
            optional("injectionWire", new Wire("of one conductor"), "default " + METRES.injectionWireMm2());
    private final Field<Double> wireFactor =
            optional("wireFactor", Numeral.aboveZero(), METRES.wireFactor(), "on the ohms of ideal copper");
    private final Field<Double> connector =
            optional("connector", Numeral.fromZero(), METRES.connector(), "ohms of a connector");
    private final Field<Double> fuseLoad =
            optional("fuseLoad", Numeral.share(), METRES.fuseLoad(), "share of a fuse that a continuous load may take");

    RulesShape() {
        super("rules");
    }

    private Field<Double> length(String name, double metres, String meaning) {
        return optional(name, Numeral.fromZero(), meaning + "; default " + Numeral.text(metres) + " m");
    }

    @Override
    protected Function<Units, Rules> build(Values values) {
        return units -> {
            Rules usual = Rules.defaults(units);
            return new Rules(
                    values.get(leadData, usual.leadData()),
                    values.get(jumperData, usual.jumperData()),
                    values.get(nullsMost),
                    values.get(hopMost, usual.hopMost()),
                    values.get(cableMost, usual.cableMost()),
                    values.get(slack),
                    values.get(trunkLoop, usual.trunkLoop()),
                    values.get(leadLoop, usual.leadLoop()),
                    values.get(leadWire, usual.leadWireMm2()),
                    values.get(injectionWire, usual.injectionWireMm2()),
                    values.get(wireFactor),
                    values.get(connector),
                    values.get(fuseLoad));
        };
    }
}

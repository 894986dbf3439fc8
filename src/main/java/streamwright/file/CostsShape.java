package streamwright.file;

import java.util.function.Function;
import streamwright.yard.Costs;
import streamwright.yard.Units;

/** The yard's prices; what is not given is the default in the yard's units. */
final class CostsShape extends Struct<Function<Units, Costs>> {
    private static final Costs METRES = Costs.defaults(Units.M);

    private final Field<Double> trunk = perLength("trunk", METRES.trunk());
    private final Field<Double> lead = perLength("lead", METRES.lead());
    private final Field<Double> jumper = perLength("jumper", METRES.jumper());
    private final Field<Double> cable = optional("cable", Numeral.fromZero(), METRES.cable(), "each jack used");
    private final Field<Double> injection =
            optional("injection", Numeral.fromZero(), METRES.injection(), "each injection, without its wire");
    private final Field<Double> injectionWire = perLength("injectionWire", METRES.injectionWire());

    CostsShape() {
        super("costs");
    }

    private Field<Double> perLength(String name, double perMetre) {
        return optional(name, Numeral.fromZero(), "a unit of length; default " + Numeral.text(perMetre) + " a metre");
    }

    @Override
    protected Function<Units, Costs> build(Values values) {
        return units -> {
            Costs usual = Costs.defaults(units);
            return new Costs(
                    values.get(trunk, usual.trunk()),
                    values.get(lead, usual.lead()),
                    values.get(jumper, usual.jumper()),
                    values.get(cable),
                    values.get(injection),
                    values.get(injectionWire, usual.injectionWire()));
        };
    }
}

package streamwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.plan.Plan;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

class UnlayTest {
    @Test
    void aPlanTakenApartAndAssembledAgainIsTheSame() {
        Plan plan = Assembly.plan(Lane.yard(), Lane.OPEN, Lane.layout());
        Layout layout = Unlay.of(Lane.yard(), plan);
        assertThat(Assembly.plan(Lane.yard(), Lane.OPEN, layout)).isEqualTo(plan);
        assertThat(layout.cables().get(0).boards().get(1))
                .isEqualTo(new Layout.Hung(
                        "B2",
                        2,
                        Lane.FOUR,
                        Lane.atWillow(Lane.FOUR).spot(),
                        Lane.atWillow(Lane.FOUR).ports()));
    }

    @Test
    void whatTheYardNoLongerHasIsLeftOut() {
        Plan plan = Assembly.plan(Lane.yard(), Lane.OPEN, Lane.layout());
        Yard yard = Lane.yard();
        List<Prop> gateAlone = yard.props().subList(0, 1);
        Yard smaller = new Yard(
                yard.name(),
                yard.units(),
                yard.frameRate(),
                yard.spare(),
                yard.brightness(),
                false,
                yard.controllers(),
                yard.boards(),
                yard.boardCount(),
                yard.spots(),
                gateAlone,
                yard.obstacles(),
                yard.rules(),
                yard.costs(),
                yard.work());
        Layout layout = Unlay.of(smaller, plan);
        assertThat(layout.cables()).hasSize(1);
        assertThat(layout.cables().get(0).boards()).hasSize(1);
        assertThat(layout.cables().get(0).boards().get(0).ports())
                .containsExactly(new Layout.Chain(1, 1, List.of(Lane.GATE_1, Lane.GATE_2)));
    }
}

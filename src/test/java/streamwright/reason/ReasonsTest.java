package streamwright.reason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Unlay;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** Reasons of whole plans, every figure of them derived again. */
class ReasonsTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 8);
    }

    private static Yard yard(long seed) {
        return RandomYard.of(seed, 6 + (int) seed * 2, 24, seed % 3 == 0 ? 3 : 0, seed % 2 == 0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyThingHasExactlyOneReason(long seed) {
        Yard yard = yard(seed);
        Ground ground = GroundPaths.of(yard);
        Plan plan = Nearest.plan(yard, ground);
        assertThat(Audit.of(yard, plan).list()).isEmpty();
        List<Reason.About> about =
                Reasons.of(yard, ground, plan).stream().map(Reason::about).toList();
        List<Reason.About> expected = new ArrayList<>();
        expected.add(Reason.About.wholeYard());
        plan.cables().forEach(cable -> expected.add(Reason.About.cable(cable.controller(), cable.jack())));
        plan.boards().forEach(board -> expected.add(Reason.About.board(board.id())));
        for (PixelString string : yard.strings()) {
            expected.add(Reason.About.string(string.prop(), string.number()));
        }
        assertThat(about).containsExactlyElementsOf(expected);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyAlternativeCarriedOutAndAuditedGivesItsFigures(long seed) {
        Yard yard = yard(seed);
        Ground ground = GroundPaths.of(yard);
        Plan plan = Nearest.plan(yard, ground);
        int told = 0;
        for (Reasons.Explained explained : Reasons.explained(yard, ground, plan, () -> false)) {
            List<Reason.Instead> derived = new ArrayList<>();
            for (Outcome outcome : explained.outcomes()) {
                Alternative alternative = outcome.alternative();
                assertThat(alternative.layout().equals(Unlay.of(yard, plan))
                                && alternative.yard().equals(yard))
                        .as(alternative.what())
                        .isFalse();
                Plan changed = Assembly.plan(alternative.yard(), ground, alternative.layout());
                Findings findings = Audit.of(alternative.yard(), changed);
                if (findings.clean()) {
                    double extra = findings.restated().cost() - plan.cost();
                    assertThat(extra).isCloseTo(changed.cost() - plan.cost(), within(1e-6));
                    derived.add(new Reason.Instead(alternative.what(), extra, null));
                } else {
                    derived.add(broken(alternative.what(), findings));
                }
            }
            told += derived.size();
            assertThat(distinct(explained.reason().instead())).hasSameSizeAs(derived);
            for (Reason.Instead instead : derived) {
                assertThat(explained.reason().instead())
                        .as(explained.reason().text())
                        .anySatisfy(given -> same(given, instead));
            }
            for (Reason.Instead given : explained.reason().instead()) {
                assertThat(given.extraCost() == null).isNotEqualTo(given.breaks() == null);
            }
        }
        assertThat(told).isGreaterThan(yard.strings().size());
    }

    /** A rule of the audit's findings, with the figure that is farthest from its limit. */
    private static Reason.Instead broken(String what, Findings findings) {
        Rule rule = findings.list().get(0).rule();
        Finding worst = findings.list().stream()
                .filter(finding -> finding.rule() == rule)
                .max(Comparator.comparingDouble(finding ->
                        Math.abs(finding.figure() - finding.limit()) / Math.max(1, Math.abs(finding.limit()))))
                .orElseThrow();
        return new Reason.Instead(what, null, new Reason.Broken(rule.label(), worst.figure(), worst.limit()));
    }

    private static Set<String> distinct(List<Reason.Instead> instead) {
        Set<String> whats = new HashSet<>();
        instead.forEach(each -> whats.add(each.what()));
        return whats;
    }

    private static void same(Reason.Instead given, Reason.Instead derived) {
        assertThat(given.what()).isEqualTo(derived.what());
        if (derived.extraCost() == null) {
            assertThat(given.breaks()).isEqualTo(derived.breaks());
        } else {
            assertThat(given.extraCost()).isCloseTo(derived.extraCost(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFigureThatDecidedStandsInTheAuditedPlan(long seed) {
        Yard yard = yard(seed);
        Ground ground = GroundPaths.of(yard);
        Plan plan = Nearest.plan(yard, ground).proved(40, 1, 1);
        Plan restated = Audit.of(yard, plan).restated();
        for (Reason reason : Reasons.of(yard, ground, plan)) {
            List<Reason.Because> derived = Derived.because(yard, restated, reason.about());
            assertThat(reason.because()).hasSameSizeAs(derived);
            for (int i = 0; i < derived.size(); i++) {
                Reason.Because given = reason.because().get(i);
                assertThat(given.rule()).isEqualTo(derived.get(i).rule());
                near(given.figure(), derived.get(i).figure());
                near(given.limit(), derived.get(i).limit());
                near(given.cost(), derived.get(i).cost());
            }
        }
    }

    private static void near(@Nullable Double given, @Nullable Double derived) {
        if (derived == null) {
            assertThat(given).isNull();
        } else {
            assertThat(given).isCloseTo(derived, within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void textsShowNoFigureThatTheReasonDoesNotHold(long seed) {
        Yard yard = yard(seed);
        Ground ground = GroundPaths.of(yard);
        Plan plan = Nearest.plan(yard, ground).proved(40, 1, 1);
        Pattern number = Pattern.compile("-?\\d+(?:\\.\\d+)?");
        for (Reason reason : Reasons.of(yard, ground, plan)) {
            Set<String> held = held(yard, plan, reason);
            Matcher figures = number.matcher(reason.text());
            while (figures.find()) {
                assertThat(held).as(reason.text()).contains(figures.group());
            }
            assertThat(reason.text()).endsWith(".").doesNotContain("  ").doesNotContain("null,");
        }
    }

    /** Every figure as texts print it, and the numbers that are parts of names. */
    private static Set<String> held(Yard yard, Plan plan, Reason reason) {
        Set<String> held = new HashSet<>();
        for (Reason.Because because : reason.because()) {
            print(held, because.figure());
            print(held, because.limit());
            print(held, because.cost());
        }
        StringBuilder names = new StringBuilder(reason.chose());
        for (Reason.Instead instead : reason.instead()) {
            names.append(' ').append(instead.what());
            print(held, instead.extraCost());
            if (instead.breaks() != null) {
                print(held, instead.breaks().figure());
                print(held, instead.breaks().limit());
            }
        }
        plan.boards().forEach(board -> names.append(' ').append(board.id()));
        yard.strings().forEach(string -> names.append(' ').append(string.label(true)));
        yard.spots().forEach(spot -> names.append(' ').append(spot.id()));
        names.append(' ').append(reason.about().jack());
        Matcher parts = Pattern.compile("-?\\d+(?:\\.\\d+)?").matcher(names);
        while (parts.find()) {
            held.add(parts.group());
        }
        return held;
    }

    private static void print(Set<String> held, @Nullable Double figure) {
        if (figure != null) {
            held.add(String.format(Locale.ROOT, "%.2f", Math.abs(figure)));
            if (figure == Math.rint(figure)) {
                held.add(String.format(Locale.ROOT, "%.0f", figure));
            }
        }
    }

    @Test
    void theSamePlanHasTheSameReasons() {
        Yard yard = yard(7);
        Plan plan = Nearest.plan(yard, GroundPaths.of(yard));
        assertThat(Reasons.of(yard, GroundPaths.of(yard), plan))
                .isEqualTo(Reasons.of(yard, GroundPaths.of(yard), plan));
    }

    @Test
    void afterTheStopThereAreFiguresButNoAlternatives() {
        Yard yard = yard(5);
        Ground ground = GroundPaths.of(yard);
        Plan plan = Nearest.plan(yard, ground);
        int[] asked = {0};
        List<Reason> reasons = Reasons.of(yard, ground, plan, () -> ++asked[0] > 8);
        assertThat(reasons).hasSameSizeAs(Reasons.of(yard, ground, plan));
        List<Reason> parts = reasons.subList(1, reasons.size());
        assertThat(parts.subList(0, 8))
                .allSatisfy(reason -> assertThat(reason.instead()).isNotEmpty());
        assertThat(parts.subList(8, parts.size())).allSatisfy(reason -> {
            assertThat(reason.instead()).isEmpty();
            assertThat(reason.because()).isNotEmpty();
        });
        // the yard's own settings are asked in any case
        assertThat(reasons.get(0).instead()).isNotEmpty();
    }
}

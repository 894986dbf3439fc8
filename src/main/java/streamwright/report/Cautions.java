package streamwright.report;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Reason;
import streamwright.plan.Rule;

/** What stands above every table of amps, volts or mains, never below it. */
public final class Cautions {
    public static final String POWER = """
            CAUTION: low-voltage strings carry fire-sized currents, mains outputs can kill, outdoor supplies need
            earth-fault protection and weatherproof enclosures. The figures are planning aids: datasheet-typical, not
            measured; local codes and licensed practice decide.""";

    private static final Set<String> RULES_OF_POWER = Stream.of(
                    Rule.FUSE, Rule.VOLTS, Rule.BOARD_VOLTS, Rule.BOARD_AMPS, Rule.SPOT_AMPS)
            .map(Rule::label)
            .collect(Collectors.toUnmodifiableSet());

    private Cautions() {}

    /** What the caution says, without its first word. */
    public static String sentence() {
        String line = line();
        int start = line.indexOf(' ') + 1;
        return Character.toUpperCase(line.charAt(start)) + line.substring(start + 1);
    }

    /** The same in one line, for a page or a cell that breaks lines itself. */
    public static String line() {
        return POWER.replace('\n', ' ');
    }

    /** Whether figures of this rule are amps or volts. */
    public static boolean needed(Rule rule) {
        return needed(rule.label());
    }

    /** The same of a rule by its name. */
    public static boolean needed(String rule) {
        return RULES_OF_POWER.contains(rule);
    }

    /** Whether a reason speaks of amps or volts. */
    public static boolean needed(Reason reason) {
        return reason.because().stream().anyMatch(because -> speaksOfPower(because.rule()))
                || reason.instead().stream()
                        .map(Reason.Instead::breaks)
                        .anyMatch(broken -> broken != null && speaksOfPower(broken.rule()));
    }

    private static boolean speaksOfPower(@Nullable String rule) {
        return rule != null && needed(rule);
    }
}

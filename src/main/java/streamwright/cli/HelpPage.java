package streamwright.cli;

import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_COMMAND_LIST;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_DESCRIPTION;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST_HEADING;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_FOOTER;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_FOOTER_HEADING;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_OPTION_LIST;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_OPTION_LIST_HEADING;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_PARAMETER_LIST;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_PARAMETER_LIST_HEADING;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_SYNOPSIS;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING;

import java.util.List;
import picocli.CommandLine;

/** Lays out every help page: what the command does, examples (kept in the footer), then the rest. */
final class HelpPage {
    private static final int WIDTH = 100;

    private HelpPage() {}

    static void layOut(CommandLine command) {
        command.setUsageHelpWidth(WIDTH);
        command.setHelpSectionKeys(List.of(
                SECTION_KEY_DESCRIPTION,
                SECTION_KEY_FOOTER_HEADING,
                SECTION_KEY_FOOTER,
                SECTION_KEY_SYNOPSIS_HEADING,
                SECTION_KEY_SYNOPSIS,
                SECTION_KEY_PARAMETER_LIST_HEADING,
                SECTION_KEY_PARAMETER_LIST,
                SECTION_KEY_OPTION_LIST_HEADING,
                SECTION_KEY_OPTION_LIST,
                SECTION_KEY_COMMAND_LIST_HEADING,
                SECTION_KEY_COMMAND_LIST,
                SECTION_KEY_EXIT_CODE_LIST_HEADING,
                SECTION_KEY_EXIT_CODE_LIST));
        for (CommandLine each : command.getSubcommands().values()) {
            layOut(each);
        }
        var usage = command.getCommandSpec().usageMessage();
        usage.footerHeading("%nExamples:%n");
        usage.synopsisHeading("%nUsage: ");
        usage.optionListHeading("%nOptions:%n");
        usage.commandListHeading("%nCommands (each has --help of its own):%n");
        usage.sortOptions(false);
        usage.abbreviateSynopsis(false);
    }
}

package streamwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.file.WholeFile;
import streamwright.plan.Plan;
import streamwright.report.Sheets;
import streamwright.report.Sheets.Kind;
import streamwright.report.walk.Misfit;
import streamwright.yard.Yard;

/** Writes what the builders take along. */
@Command(
        name = "sheets",
        description = "Writes the page with map, lid cards and commissioning list, and the lists to pull and buy by.",
        footer = {
            "  streamwright sheets yard.yaml plan.json -d sheets                       all of them",
            "  streamwright sheets yard.yaml plan.json -d sheets --only page           the page alone",
            "  streamwright sheets yard.yaml plan.json -d sheets --only pulls,shopping two of the lists",
        },
        mixinStandardHelpOptions = true)
final class SheetsCommand implements Callable<Integer> {
    @Mixin
    private YardSource source;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan file.")
    private Path planPath;

    @Option(
            names = {"-d", "--directory"},
            paramLabel = "DIR",
            required = true,
            description = "The folder for the files; it is made if it is not there.")
    private Path folder;

    @Option(
            names = "--only",
            paramLabel = "WHICH",
            split = ",",
            description = "Of page, boards, channels, pulls, shopping, commissioning, workbook. Default: all.")
    private @Nullable List<String> only;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        Set<Kind> kinds = kinds();
        YardAndPlan read = YardAndPlan.read(source, planPath, console);
        Yard yard = read.yard();
        Plan plan = read.plan();
        Map<String, byte[]> files;
        try {
            files = Sheets.of(yard, plan, kinds);
        } catch (Misfit misfit) {
            throw new Wrong(planPath + " is no plan of this yard: " + misfit.getMessage());
        }
        write(files);
        files.keySet().forEach(name -> console.out().println(folder.resolve(name)));
        return Exit.DONE;
    }

    private Set<Kind> kinds() {
        if (only == null) {
            return EnumSet.allOf(Kind.class);
        }
        Map<String, Kind> known = new LinkedHashMap<>();
        Arrays.stream(Kind.values()).forEach(kind -> known.put(kind.label(), kind));
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        only.forEach(name -> kinds.add(Inputs.named("sheet", name.strip(), known)));
        return kinds;
    }

    private void write(Map<String, byte[]> files) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                WholeFile.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            throw new Wrong(folder + " could not be written into (" + Refusal.of(e) + "); name another after -d.");
        }
    }
}

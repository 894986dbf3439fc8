package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.check.Audit;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.plan.Board;
import streamwright.plan.Change;
import streamwright.plan.Plan;

class RebalanceCommandTest {
    private static final String SECONDS = "60";

    @TempDir
    private Path folder;

    private Ran rebalance(Path from, String... more) {
        String[] args = new String[8 + more.length];
        List<String> first = List.of(
                "rebalance",
                ShortLane.YARD.toString(),
                "--from",
                from.toString(),
                "-o",
                folder.resolve("next.json").toString(),
                "--time",
                SECONDS);
        for (int i = 0; i < first.size(); i++) {
            args[i] = first.get(i);
        }
        System.arraycopy(more, 0, args, 8, more.length);
        return Ran.of(args);
    }

    private Plan next() {
        return ((Read.Good<Plan>) PlanFile.read(folder.resolve("next.json"))).value();
    }

    @Test
    void anUnbrokenPlanStaysAsItIs() {
        Ran ran = rebalance(ShortLane.planIn(folder));
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("No rule is broken: there is nothing to change.");
        assertThat(next().changes()).isEmpty();
        assertThat(next().work()).isZero();
        Plan same = ((Read.Good<Plan>) PlanFile.read(folder.resolve("plan.json"))).value();
        assertThat(next().boards()).isEqualTo(same.boards());
    }

    @Test
    void whatCannotBeMendedIsExplained() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD) + "rules: {hopMost: 2}\n");
        Ran ran = Ran.of(
                "rebalance", yard.toString(), "--from", ShortLane.planIn(folder).toString(), "--time", "5");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("No repair exists.", "These cannot all hold:", "rules.hopMost 2 m", "What would help");
    }

    /** One of two boards with one ID is set anew: a minute, and nothing takes less. */
    @Test
    void anIdThatTwoBoardsHaveIsSetAnew() {
        Path broken = ShortLane.changedIn(folder, "\"boardId\": 2", "\"boardId\": 1");
        Ran ran = rebalance(broken);
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("1 minute of work (1 setting), proved the least", "Why: ");
        assertThat(next().work()).isEqualTo(1);
        assertThat(next().workBound()).isEqualTo(1);
        assertThat(Audit.of(ShortLane.yard(), next()).list()).isEmpty();
    }

    /** A board that hangs where none may goes back to where it reaches its strings, and takes them along. */
    @Test
    void aBoardInAWrongPlaceIsMovedWithItsStrings() {
        Board moved = ShortLane.plan().boards().get(1);
        Path wrong = ShortLane.changedIn(
                folder,
                "\"at\": [%s, %s]"
                        .formatted(plain(moved.at().x()), plain(moved.at().y())),
                "\"at\": [1.5, 17.25]");
        Ran ran = rebalance(wrong);
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(next().work()).as(ran.out()).isEqualTo(20);
        assertThat(ran.out()).contains("(1 board), proved the least");
    }

    private static String plain(double coordinate) {
        return coordinate == Math.rint(coordinate) ? Long.toString((long) coordinate) : Double.toString(coordinate);
    }

    /** A third board takes a hop and a string: 20, 25 and 15 minutes. */
    @Test
    void aBoardMoreThatThereMustBeTakesOneStringAlong() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD) + "boardCount: {least: 3, most: 3}\n");
        Path next = folder.resolve("next.json");
        Ran ran = Ran.of(
                "rebalance", yard.toString(), "--from", ShortLane.planIn(folder).toString(), "-o", next.toString());
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(next().boards()).hasSize(3);
        assertThat(next().work()).as(ran.out()).isEqualTo(60);
        assertThat(next().workBound()).isEqualTo(60);
    }

    /** Costs that a hand-made plan says wrongly are no crew's work. */
    @Test
    void whatThePlanSaysWronglyOfItselfIsNoWork() {
        Ran ran = rebalance(ShortLane.changedIn(folder, "\"trunk\": ", "\"trunk\": 1"));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("0 minutes of work", "mends    what the plan says wrongly of itself\n")
                .contains("There is nothing for a crew to do.");
    }

    private Path planOf(List<Board> boards) throws IOException {
        Path path = folder.resolve("fewer.json");
        PlanFile.write(ShortLane.plan().withBoards(boards), path);
        return path;
    }

    @Test
    void theStringOfABoardThatIsNotThereIsPluggedElsewhereOrABoardHungForIt() throws IOException {
        Ran ran = rebalance(planOf(ShortLane.plan().boards().subList(0, 1)));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(Audit.of(ShortLane.yard(), next()).list()).isEmpty();
        assertThat(next().changes()).extracting(Change::kind).contains("lead");
        double minutes = next().changes().stream().mapToDouble(Change::minutes).sum();
        assertThat(next().work()).isEqualTo(minutes);
        assertThat(next().boards())
                .extracting(board -> board.id())
                .contains("B1")
                .doesNotContain("B2");
    }

    /** The minutes of a board; its cables and leads serve the one that is hung in its place. */
    @Test
    void aDeadBoardIsReplacedInItsPlace() {
        Ran ran = rebalance(ShortLane.planIn(folder), "--dead", "B2");
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains(
                        "20 minutes of work (1 board), proved the least",
                        "mends    1 dead board\n",
                        "Take the dead board B2 off");
        Plan same = ((Read.Good<Plan>) PlanFile.read(folder.resolve("plan.json"))).value();
        assertThat(next().boards()).isEqualTo(same.boards());
        assertThat(next().changes()).extracting(Change::kind).containsExactly("board");
    }

    /** Where no board may be bought, what was on the dead one goes to what is left. */
    @Test
    void aDeadBoardThatCannotBeReplacedComesDown() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD).replace("{model: quad}", "{model: quad, most: 1}"));
        Path next = folder.resolve("next.json");
        Ran ran = Ran.of(
                "rebalance",
                yard.toString(),
                "--from",
                ShortLane.planIn(folder).toString(),
                "--dead",
                "B2",
                "-o",
                next.toString());
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("Take down the dead board B2");
        assertThat(next().boards()).hasSize(1);
        assertThat(Audit.of(ShortLane.yard(yard), next()).list()).isEmpty();
    }

    /** One new board at the gate reaches all three strings: a board, a hop and three leads. */
    @Test
    void whatMayNotChangeIsNamedWithTheCheapestPermission() throws IOException {
        Ran ran = rebalance(planOf(List.of()), "--keep", "boards,ports");
        assertThat(ran.status()).isEqualTo(Exit.BROKEN);
        assertThat(ran.err())
                .contains("cannot be mended while boards are kept", "let boards change, for 90 minutes of work");
    }

    /** That there is no repair is only said where it is proved. */
    @Test
    void thatNoneWasFoundIsNotCalledImpossible() throws IOException {
        Ran ran = Ran.of(
                "rebalance",
                ShortLane.YARD.toString(),
                "--from",
                planOf(List.of()).toString(),
                "--keep",
                "cables",
                "--time",
                "0.001");
        assertThat(ran.status()).isEqualTo(Exit.STOPPED);
        assertThat(ran.err())
                .contains("No repair was found while cables are kept; that there is none is not proved.")
                .doesNotContain("cannot be mended");
    }

    @Test
    void aWrongWordIsToldWithWhatThereIs() {
        Ran ran = rebalance(ShortLane.planIn(folder), "--keep", "cable");
        assertThat(ran.status()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("Did you mean 'cables'?");
        assertThat(rebalance(ShortLane.planIn(folder), "--dead", "B7").err()).contains("no board 'B7'");
    }

    @Test
    void explainTellsTheDifferenceOfTwoPlans() throws IOException {
        Path plan = ShortLane.planIn(folder);
        rebalance(planOf(ShortLane.plan().boards().subList(0, 1)));
        Ran ran = Ran.of(
                "explain",
                ShortLane.YARD.toString(),
                folder.resolve("next.json").toString(),
                "--from",
                plan.toString());
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains(
                        "From the first plan to the second: ",
                        "cost",
                        "Take down board B2",
                        "Lantern stays dark until step");
        // what the first plan says wrongly of itself is no broken rule that a crew mends
        assertThat(ran.out()).containsPattern("rules broken \\|\\s+0 \\|\\s+0 \\|");
        Ran same = Ran.of("explain", ShortLane.YARD.toString(), plan.toString(), "--from", plan.toString());
        assertThat(same.out()).contains("Nothing differs that a crew would touch.");
    }
}

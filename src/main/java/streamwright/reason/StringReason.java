package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import streamwright.physics.Runs;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;
import streamwright.plan.StringUse;
import streamwright.yard.PixelString;
import streamwright.yard.Rules;

/** Why a string is on its port: its wire, the nulls in it, its stream, the port's fuse. */
final class StringReason {
    private StringReason() {}

    static Reason of(Facts facts, Measures measures, PixelString string, Facts.Use use, List<Outcome> outcomes) {
        Words words = new Words(facts.yard.units());
        List<Reason.Instead> instead = outcomes.stream().map(Outcome::instead).toList();
        String port = "port " + use.port().port() + " of board " + use.board().id();
        String chose = port + (use.place() == 0 ? ", by a lead" : ", by a jumper from " + before(measures, use));
        return new Reason(
                About.string(string.prop(), string.number()),
                chose,
                because(facts, use),
                instead,
                words.sentence(chosen(facts, measures, words, string, use, port), instead));
    }

    private static List<Because> because(Facts facts, Facts.Use use) {
        Rules rules = facts.yard.rules();
        StringUse string = use.string();
        List<Because> because = new ArrayList<>();
        double most = use.place() == 0 ? Runs.leadMost(rules) : Runs.jumperMost(rules);
        because.add(Because.rule(Rule.LENGTH, string.length(), most));
        because.add(Because.rule(Rule.LEAD_NULLS, string.nulls(), rules.nullsMost()));
        facts.stream(use)
                .ifPresent(stream -> because.add(Because.rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit())));
        facts.model(use.board())
                .filter(model -> Double.isFinite(model.fuse()))
                .ifPresent(model ->
                        because.add(Because.rule(Rule.FUSE, use.port().amps(), model.fuse() * rules.fuseLoad())));
        because.add(Because.cost(facts.wire(string, use.place())));
        return because;
    }

    private static String chosen(
            Facts facts, Measures measures, Words words, PixelString string, Facts.Use use, String port) {
        String label = measures.label(string);
        String wire = words.length(use.string().length());
        String hangs = use.place() == 0
                ? label + " hangs on " + port + " by a lead of " + wire
                : label + " follows " + before(measures, use) + " on " + port + " by a jumper of " + wire;
        int nulls = use.string().nulls();
        String with = nulls == 0 ? "" : " with " + Words.count(nulls, "null pixel", "null pixels") + " in it";
        return hangs
                + with
                + facts.stream(use)
                        .map(stream -> ", and its stream" + Words.carries(stream))
                        .orElse("");
    }

    private static String before(Measures measures, Facts.Use use) {
        StringUse before = use.port().strings().get(use.place() - 1);
        return measures.label(before.prop(), before.string());
    }
}

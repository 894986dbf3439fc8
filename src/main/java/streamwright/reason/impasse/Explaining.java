package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BooleanSupplier;
import streamwright.solve.Outcome;
import streamwright.yard.BoardModel;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Finds out why there is no plan for a yard. */
public final class Explaining {
    /** Of the time, for the clash. */
    private static final double CLASH = 0.6;

    private Explaining() {}

    /** Told how far the explanation is. */
    public interface Listener {
        /** Nobody listens. */
        Listener NONE = new Listener() {
            @Override
            public void begins(String what) {
                // nobody waits
            }

            @Override
            public void known(Impasse impasse) {
                // the end tells all
            }
        };

        /** What is looked for from now on. */
        void begins(String what);

        /** All that is known by now. */
        void known(Impasse impasse);
    }

    /**
     * Explains a yard that is proved to have no plan, as far as the time allows.
     *
     * @param obstructions what arithmetic says of it
     * @param models boards that one could buy, whether on offer or not
     * @param stop asked often; true ends it with what is known by then
     */
    public static Impasse ofImpossible(
            Yard yard,
            List<Outcome.Obstruction> obstructions,
            Collection<BoardModel> models,
            double seconds,
            BooleanSupplier stop,
            Listener listener) {
        Impasse impasse = Impasse.impossible(yard.name(), obstructions);
        listener.known(impasse);
        listener.begins("looking for the rules and things that clash");
        Oracle oracle = new Oracle(System.nanoTime() + (long) (seconds * 1e9), stop);
        Clash.Found found = Clash.of(yard, obstructions, oracle.share(CLASH));
        impasse = impasse.with(found.clash());
        listener.known(impasse);
        listener.begins("trying what would help");
        List<Claim> limits = found.parts().limits();
        List<Prop> few = Candidates.fewest(yard, found.parts().things());
        List<Candidate> alone = new ArrayList<>(Candidates.ofLimits(limits));
        alone.addAll(Candidates.ofModels(yard, few, models));
        if (limits.stream().anyMatch(Claim::place)) {
            alone.addAll(Candidates.ofPlaces(yard, few));
        }
        impasse = impasse.with(new WaysOut(yard, oracle)
                .of(alone, Candidates.ofLess(yard, few), Candidates.ofLimits(Limits.of(yard))));
        listener.known(impasse);
        return impasse;
    }

    /**
     * Of a yard for which no plan was found, though none is proved impossible, tells what stands in the way: what, were
     * it otherwise, would let a plan be found.
     */
    public static Impasse ofUnknown(
            Yard yard, Collection<BoardModel> models, double seconds, BooleanSupplier stop, Listener listener) {
        listener.begins("trying what would help");
        Oracle oracle = new Oracle(System.nanoTime() + (long) (seconds * 1e9), stop);
        List<Candidate> limits = Candidates.ofLimits(Limits.of(yard));
        List<Candidate> alone = new ArrayList<>(limits);
        alone.addAll(Candidates.ofModels(yard, yard.props(), models));
        Impasse impasse = Impasse.unknown(yard.name()).with(new WaysOut(yard, oracle).of(alone, List.of(), limits));
        listener.known(impasse);
        return impasse;
    }
}

package streamwright.solve;

import streamwright.yard.Address;
import streamwright.yard.BoardModel;

/** Whether the boards of a cable can be given IDs that differ. */
final class Ids {
    private Ids() {}

    /** Lowest ID that a model can take. */
    static int least(BoardModel model) {
        return model.address() instanceof Address.Switches s
                ? s.least()
                : model.address() instanceof Address.Rotary r ? r.least() : 0;
    }

    /** Highest ID that a model can take. */
    static int most(BoardModel model) {
        return model.address() instanceof Address.Switches s
                ? s.most()
                : model.address() instanceof Address.Rotary r ? r.most() : 0;
    }

    /**
     * Whether the cable's boards and one more of the model can be told apart. By Hall's theorem on intervals: no
     * interval of IDs may hold the whole ranges of more boards than it has IDs. As many boards as the least range has IDs
     * never do.
     */
    static boolean enough(Site site, Draft.Cable cable, int model) {
        if (cable.size < site.idsAtLeast) {
            return true;
        }
        int[] least = new int[cable.size + 1];
        int[] most = new int[cable.size + 1];
        for (int i = 0; i <= cable.size; i++) {
            BoardModel m = site.model(i < cable.size ? cable.boards[i].model : model);
            least[i] = least(m);
            most[i] = most(m);
        }
        for (int from : least) {
            for (int to : most) {
                int inside = 0;
                for (int i = 0; i < least.length; i++) {
                    inside += least[i] >= from && most[i] <= to ? 1 : 0;
                }
                if (to >= from && inside > to - from + 1) {
                    return false;
                }
            }
        }
        return true;
    }
}

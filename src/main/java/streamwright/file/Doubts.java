package streamwright.file;

import java.util.List;
import streamwright.yard.Controller;
import streamwright.yard.Point;
import streamwright.yard.Spot;

/** Warns of what is allowed but hardly meant. */
record Doubts(Problems problems, Blocked blocked) {
    void tell(
            List<PropDraft> props,
            List<Spot> spots,
            Place spotsPlace,
            List<Controller> controllers,
            Place controllersPlace,
            boolean keep) {
        controllers.forEach(box -> blocked.warn(controllersPlace, "controller " + box.id(), box.at(), problems));
        spots.forEach(spot -> blocked.warn(spotsPlace, "spot " + spot.id(), spot.at(), problems));
        props.forEach(prop -> tell(prop, keep));
    }

    private void tell(PropDraft prop, boolean keep) {
        if (prop.followed() && !prop.tailGiven()) {
            problems.warn(
                    prop.place(),
                    "no tail",
                    "the tail of " + prop.id() + " is taken for its feed, and jumpers start there");
        }
        if (!keep && prop.channel() != null) {
            problems.warn(
                    prop.channelPlace(), "channel " + prop.channel(), "is not used, since channels are renumbered");
        }
        if (prop.at() != null) {
            blocked.warn(prop.place(), "prop " + prop.id(), prop.at(), problems);
        }
        for (StringRun run : prop.runs()) {
            tell(prop, "a feed of " + prop.id(), run.feed());
            if (prop.followed()) {
                tell(prop, "a tail of " + prop.id(), run.end());
            }
        }
    }

    private void tell(PropDraft prop, String what, Point point) {
        blocked.warn(prop.place(), what, point, problems);
    }
}

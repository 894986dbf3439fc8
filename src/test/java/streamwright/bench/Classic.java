package streamwright.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Classical problems as yards: their optimum is a known cost of the yard, whatever planner finds it. */
final class Classic {
    private static final double FAR = 1e6;

    /** So quick that only the controller limits a stream. */
    private static final PixelKind QUICK = new PixelKind("quick", 3, 24, 1e-4, 0, 0, 12, 1, 1e-9, 0.1, 0.5, "invented");

    private Classic() {}

    /**
     * Bin packing: everything in one place, a bin is a cable of one stream and costs 1, an item is a string that shares
     * no port, and nothing else costs.
     */
    static Yard binPacking(String name, int capacity, List<Integer> sizes) {
        Point here = new Point(0, 0);
        List<Prop> props = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            props.add(item("item " + (i + 1), sizes.get(i), here));
        }
        int jacks = sizes.size();
        ControllerModel model = new ControllerModel("bins", jacks, 1, 1, capacity, Integer.MAX_VALUE, 510);
        List<Integer> ports = Collections.nCopies(sizes.size(), 1);
        return yard(name, new Controller("depot", model, here, 1, 1), ports, props, new Costs(0, 0, 0, 1, 0, 0));
    }

    /** A customer of a route, the depot not among them. */
    record Customer(double x, double y, int demand) {}

    /**
     * Open vehicle routing: a route is a cable of one stream and as many pixels as a vehicle carries, a customer is a
     * string with a board of one port at its feed, and only trunk costs. Customers at one place stay apart by boards.
     */
    static Yard openRouting(String name, Point depot, int vehicles, int capacity, List<Customer> customers) {
        List<Prop> props = new ArrayList<>();
        for (int c = 0; c < customers.size(); c++) {
            Customer customer = customers.get(c);
            props.add(item("customer " + (c + 1), customer.demand, new Point(customer.x, customer.y)));
        }
        ControllerModel model =
                new ControllerModel("depot", vehicles, 1, customers.size(), capacity, Integer.MAX_VALUE, 510);
        return yard(name, new Controller("depot", model, depot, 1, 1), List.of(1), props, new Costs(1, 0, 0, 0, 0, 0));
    }

    private static Prop item(String id, int pixels, Point at) {
        return Prop.ofStrings(id, QUICK, Follow.NONE, List.of(new PixelString(id, 1, pixels, at, at)));
    }

    private static Yard yard(String name, Controller controller, List<Integer> ports, List<Prop> props, Costs costs) {
        BoardModel board =
                BoardModel.ofPorts("board", ports, new Address.Switches(0, 65_535, 16), 0, Double.POSITIVE_INFINITY);
        // leads reach nothing but what hangs at the board itself
        Rules rules = new Rules(1e-6, 1e-6, 0, FAR, FAR, 1, 0, 0, 1, 1, 1, 0, 0.8);
        return new Yard(
                name,
                Units.M,
                1,
                0,
                1,
                false,
                List.of(controller),
                List.of(new BoardOffer(board, Integer.MAX_VALUE, 0, 0)),
                BoardCount.FREE,
                List.of(),
                props,
                List.of(),
                rules,
                costs,
                Work.DEFAULTS);
    }
}

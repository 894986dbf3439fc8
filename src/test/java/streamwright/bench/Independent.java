package streamwright.bench;

import com.graphhopper.jsprit.core.algorithm.box.Jsprit;
import com.graphhopper.jsprit.core.algorithm.termination.TimeTermination;
import com.graphhopper.jsprit.core.problem.Location;
import com.graphhopper.jsprit.core.problem.VehicleRoutingProblem;
import com.graphhopper.jsprit.core.problem.job.Service;
import com.graphhopper.jsprit.core.problem.solution.VehicleRoutingProblemSolution;
import com.graphhopper.jsprit.core.problem.vehicle.VehicleImpl;
import com.graphhopper.jsprit.core.problem.vehicle.VehicleTypeImpl;
import com.graphhopper.jsprit.core.util.Solutions;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/**
 * An independent routing solver (jsprit, ruin and recreate) on a yard of {@link Classic#openRouting}: cables are vehicles
 * that do not come home, strings are deliveries of as many pieces as they have pixels.
 */
final class Independent {
    private Independent() {}

    /** The cost of the best plan within a time; not a number where some string is left out. */
    static double cost(Yard yard, double seconds, int workers) {
        Controller controller = yard.controllers().get(0);
        VehicleTypeImpl type = VehicleTypeImpl.Builder.newInstance("cable")
                .addCapacityDimension(0, controller.model().streamMost())
                .setCostPerDistance(yard.costs().trunk())
                .setFixedCost(yard.costs().cable())
                .build();
        VehicleRoutingProblem.Builder problem =
                VehicleRoutingProblem.Builder.newInstance().setFleetSize(VehicleRoutingProblem.FleetSize.FINITE);
        for (int jack = 1; jack <= controller.model().jacks(); jack++) {
            problem.addVehicle(VehicleImpl.Builder.newInstance("jack " + jack)
                    .setType(type)
                    .setStartLocation(at(controller.at()))
                    .setReturnToDepot(false)
                    .build());
        }
        for (PixelString string : yard.strings()) {
            problem.addJob(Service.Builder.newInstance(string.prop())
                    .addSizeDimension(0, string.pixels())
                    .setLocation(at(string.feed()))
                    .build());
        }
        var algorithm = Jsprit.Builder.newInstance(problem.build())
                .setProperty(Jsprit.Parameter.THREADS, String.valueOf(workers))
                .buildAlgorithm();
        algorithm.setMaxIterations(Integer.MAX_VALUE);
        TimeTermination time = new TimeTermination((long) (seconds * 1000));
        algorithm.setPrematureAlgorithmTermination(time);
        algorithm.addListener(time);
        VehicleRoutingProblemSolution best = Solutions.bestOf(algorithm.searchSolutions());
        return best.getUnassignedJobs().isEmpty() ? best.getCost() : Double.NaN;
    }

    private static Location at(Point point) {
        return Location.newInstance(point.x(), point.y());
    }
}

package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/** The firing: load, furniture and steps. */
public record FiringPlan(Quantity load, Quantity shelvesMass, List<FiringStep> steps, Prices prices) {}

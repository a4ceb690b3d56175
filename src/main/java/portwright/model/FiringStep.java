package portwright.model;

import portwright.units.Quantity;

/** A step: rise to a temperature or cone at a rate ({@code fullRate}: all the power there is), or a hold. {@code cone}: its number as written, "10" or "06". {@code elementShare} null: controller; {@code elementsStated} whether the step says so itself. {@code ports} null: plugged while no gas burns. */
public record FiringStep(
        Quantity to,
        String cone,
        Quantity rate,
        boolean fullRate,
        Quantity hold,
        Heat heat,
        Quantity elementShare,
        boolean elementsStated,
        PortsState ports,
        Atmosphere atmosphere) {}

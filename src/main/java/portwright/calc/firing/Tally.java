package portwright.calc.firing;

import java.util.ArrayList;
import java.util.List;

/** Clock, heat, gas and cones of a firing while it is computed, and its samples. */
abstract class Tally {
    final Numerics numerics;
    final Balance balance;
    final List<ConeWork> watched;
    /** Share of its work that each watched cone has had; 1 when it is down. */
    final double[] work;

    final List<Sample> samples = new ArrayList<>();
    final List<ConeDown> down = new ArrayList<>();
    double timeS;
    double electricJ;
    double fuelNetJ;
    double fuelKg;
    double carriedOutJ;
    double radiationJ;
    /** Part of what is carried out: by leaks while the ports are plugged. */
    double leakJ;

    double wallLossJ;
    double hottestOutsideK;
    /** Of the chamber over the last time step, K/s. */
    double climb;
    /** Whether the time runs between two steps. */
    boolean between;

    Tally(Balance balance, List<ConeWork> watched, Numerics numerics) {
        this.balance = balance;
        this.watched = watched;
        this.numerics = numerics;
        this.work = new double[watched.size()];
    }

    final int indexOf(ConeWork cone) {
        for (int i = 0; i < watched.size(); i++) {
            if (watched.get(i).name().equals(cone.name())) {
                return i;
            }
        }
        throw new IllegalStateException("cone " + cone.name() + " is not watched");
    }

    final double coneWork(int i, double fromK, double toK, double dt) {
        ConeWork w = watched.get(i);
        return dt * (w.perSecond(fromK) + 4 * w.perSecond((fromK + toK) / 2) + w.perSecond(toK)) / 6;
    }

    final double nextSampleS() {
        double k = Math.floor(timeS / numerics.sampleS() + 1e-9) + 1;
        return k * numerics.sampleS();
    }

    final void commit(double dt, FlowCurve flow, int step, int fallen) {
        double before = balance.chamberK();
        balance.accept();
        double now = balance.chamberK();
        GasExchange.Flow f = flow.at(now);
        climb = (now - before) / dt;
        electricJ += balance.powerW() * dt;
        fuelNetJ += f.fuelNetW() * dt;
        fuelKg += f.fuelKgPerS() * dt;
        carriedOutJ += (f.fuelNetW() - balance.flowHeatW()) * dt;
        leakJ += flow.open() ? 0 : -balance.flowHeatW() * dt;
        radiationJ += balance.radiationW() * dt;
        wallLossJ += balance.wallLossW() * dt;
        hottestOutsideK = Math.max(hottestOutsideK, balance.hottestOutsideK());
        timeS += dt;
        for (int i = 0; i < work.length; i++) {
            if (work[i] < 1) {
                work[i] += coneWork(i, before, now, dt);
                if (work[i] >= 1 || i == fallen) {
                    work[i] = 1;
                    down.add(new ConeDown(watched.get(i).name(), timeS, now));
                }
            }
        }
        if (Math.abs(timeS - Math.round(timeS / numerics.sampleS()) * numerics.sampleS()) < 1e-6) {
            sample(step, flow, climb);
        }
    }

    final void sample(int step, FlowCurve flow, double climbNow) {
        GasExchange.Flow f = flow.at(balance.chamberK());
        if (!samples.isEmpty() && samples.get(samples.size() - 1).timeS() >= timeS - 1e-6) {
            return;
        }
        samples.add(new Sample(
                timeS,
                step,
                between,
                balance.chamberK(),
                balance.loadK(),
                climbNow,
                balance.powerW(),
                f.fuelNetW(),
                balance.flowHeatW(),
                balance.radiationW(),
                balance.wallLossW(),
                f.fuelKgPerS(),
                f.airKgPerS(),
                f.lambda()));
    }
}

package org.trammel.shop.web;

/** An axis from a round figure to a round figure, in round steps. */
record RoundScale(double from, double to, double step, int decimals) {

    /** So many steps an axis has about. */
    private static final int STEPS = 5;

    static RoundScale of(double least, double most) {
        double raw = (most - least) / STEPS;
        double ten = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = ten * (raw / ten <= 1 ? 1 : raw / ten <= 2 ? 2 : raw / ten <= 5 ? 5 : 10);
        return new RoundScale(Math.floor(least / step + 1e-9) * step, Math.ceil(most / step - 1e-9) * step, step, (int)
                Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
    }

    int steps() {
        return (int) Math.round((to - from) / step);
    }

    double at(int step) {
        return from + step * this.step;
    }

    double share(double value) {
        return (value - from) / (to - from);
    }
}

package org.trammel.shop.assembly;

import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.settings.SetUpPart;

@Component
class ComponentsSetUp implements SetUpPart {

    private final Components components;
    private final RouteBook routes;

    ComponentsSetUp(Components components, RouteBook routes) {
        this.components = components;
        this.routes = routes;
    }

    @Override
    public int place() {
        return 74;
    }

    @Override
    public State state() {
        long inForce = components.inForce().size();
        boolean enough = inForce > 0 || routes.rests(Proof.Sheet.TORQUE).isEmpty();
        return new State(
                "Sheets of components",
                inForce,
                enough,
                enough
                        ? "Enter the sheet of each component before it is fitted."
                        : "Enter what the sheets of the components ask for: released routes rest on torques by them.",
                "/shop/components");
    }
}

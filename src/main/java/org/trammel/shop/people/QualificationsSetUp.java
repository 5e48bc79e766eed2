package org.trammel.shop.people;

import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;
import org.trammel.shop.settings.Settings;

@Component
class QualificationsSetUp implements SetUpPart {

    private final Qualifications qualifications;
    private final Settings settings;

    QualificationsSetUp(Qualifications qualifications, Settings settings) {
        this.qualifications = qualifications;
        this.settings = settings;
    }

    @Override
    public int place() {
        return 40;
    }

    @Override
    public State state() {
        long valid = qualifications.all().stream()
                .filter(one -> one.state(settings.today()) == Standing.State.VALID)
                .count();
        return new State(
                "Qualifications",
                valid,
                valid > 0,
                "Enter what each welder, brazer and aligner holds; steps that ask for it stay shut without.",
                "/shop/people");
    }
}

package org.trammel.shop.routes;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;
import org.trammel.shop.records.Act;

/** What the route editor sends: one change of the draft at the version it was made on. */
@Controller
@RequestMapping("/routes/{code}/draft")
class RouteEditPages {

    private final RouteDrafts drafts;

    RouteEditPages(RouteDrafts drafts) {
        this.drafts = drafts;
    }

    @PostMapping("/operation")
    String operation(Act act, @PathVariable String code, @RequestParam long version, RouteForms.OperationForm form) {
        return done(act, code, version, form.edit(), form.code());
    }

    @PostMapping("/operation/move")
    String moveOperation(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam boolean up) {
        return done(act, code, version, new OperationEdit.Move(op, up), op);
    }

    @PostMapping("/operation/split")
    String splitOperation(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam int stay,
            @RequestParam @Nullable List<String> characteristics,
            @RequestParam("second") String second,
            @RequestParam String name) {
        List<String> go = characteristics == null ? List.of() : characteristics;
        return done(act, code, version, new OperationEdit.Split(op, stay, go, second, name), op);
    }

    @PostMapping("/operation/retire")
    String retireOperation(Act act, @PathVariable String code, @RequestParam long version, @RequestParam String op) {
        return done(act, code, version, new OperationEdit.Retire(op), null);
    }

    @PostMapping("/restore")
    String restore(Act act, @PathVariable String code, @RequestParam long version, @RequestParam String place) {
        Edit edit = place.contains("-") ? new CharacteristicEdit.Restore(place) : new OperationEdit.Restore(place);
        return done(act, code, version, edit, place.contains("-") ? null : place);
    }

    @PostMapping("/step")
    String step(Act act, @PathVariable String code, @RequestParam long version, RouteForms.StepForm form) {
        return done(act, code, version, form.edit(), form.op());
    }

    @PostMapping("/step/move")
    String moveStep(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam int number,
            @RequestParam boolean up) {
        return done(act, code, version, new StepEdit.Move(op, number, up), op);
    }

    @PostMapping("/step/split")
    String splitStep(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam int number,
            @RequestParam String first,
            @RequestParam String second) {
        return done(act, code, version, new StepEdit.Split(op, number, first, second), op);
    }

    @PostMapping("/step/retire")
    String retireStep(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam int number) {
        return done(act, code, version, new StepEdit.Retire(op, number), op);
    }

    @PostMapping("/characteristic")
    String characteristic(
            Act act, @PathVariable String code, @RequestParam long version, RouteForms.CharacteristicForm form) {
        return done(act, code, version, form.edit(), form.op());
    }

    @PostMapping("/characteristic/move")
    String moveCharacteristic(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam String item,
            @RequestParam boolean up) {
        return done(act, code, version, new CharacteristicEdit.Move(item, up), op);
    }

    @PostMapping("/characteristic/split")
    String splitCharacteristic(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam String item,
            @RequestParam String first,
            @RequestParam String second) {
        return done(act, code, version, new CharacteristicEdit.Split(item, first, second), op);
    }

    @PostMapping("/characteristic/retire")
    String retireCharacteristic(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String op,
            @RequestParam String item) {
        return done(act, code, version, new CharacteristicEdit.Retire(item), op);
    }

    @PostMapping("/clock")
    String clock(Act act, @PathVariable String code, @RequestParam long version, RouteForms.ClockForm form) {
        return done(act, code, version, form.edit(), null);
    }

    @PostMapping("/clock/retire")
    String retireClock(Act act, @PathVariable String code, @RequestParam long version, @RequestParam String item) {
        return done(act, code, version, new ClockEdit.Retire(item), null);
    }

    @PostMapping("/part")
    String part(
            Act act,
            @PathVariable String code,
            @RequestParam long version,
            @RequestParam String part,
            @RequestParam String name,
            @RequestParam String route) {
        return done(act, code, version, new PartEdit.Add(part, name, route), null);
    }

    @PostMapping("/part/retire")
    String retirePart(Act act, @PathVariable String code, @RequestParam long version, @RequestParam String item) {
        return done(act, code, version, new PartEdit.Retire(item), null);
    }

    private String done(Act act, String code, long version, Edit edit, @Nullable String op) {
        drafts.edit(act, code, version, edit);
        UriComponentsBuilder page = UriComponentsBuilder.fromPath("/routes/{code}");
        if (op != null) {
            page.queryParam("op", "{op}");
        }
        return "redirect:" + page.encode().buildAndExpand(code, op).toUriString();
    }
}

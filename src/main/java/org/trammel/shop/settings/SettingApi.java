package org.trammel.shop.settings;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

@RestController
@RequestMapping("/api/v1/settings")
@Tag(name = "Settings", description = "What the shop has decided for itself; every value with its source")
class SettingApi {

    private final Settings settings;

    SettingApi(Settings settings) {
        this.settings = settings;
    }

    @GetMapping
    @Operation(summary = "All values in force")
    List<Setting> all() {
        return settings.all();
    }

    @GetMapping("/{key}")
    Setting one(@PathVariable String key) {
        return settings.inForce(key);
    }

    @GetMapping("/{key}/definition")
    @Operation(summary = "What the setting is and what its value may be")
    Definition definition(@PathVariable String key) {
        return settings.definition(key);
    }

    @GetMapping("/{key}/history")
    @Operation(summary = "Every value it ever had, newest first")
    List<Setting> history(@PathVariable String key) {
        return settings.history(key);
    }

    /** @param seen id of the value that was in force when it was read; left out to skip the comparison */
    record Change(
            String value,
            String source,
            String reason,
            @Nullable Long seen) {}

    @PutMapping("/{key}")
    @Operation(summary = "Puts a new value in force; by the owner or QA lead")
    Setting change(Act act, @PathVariable String key, @RequestBody Change body) {
        return settings.change(act, key, body.value(), body.source(), body.reason(), body.seen());
    }
}

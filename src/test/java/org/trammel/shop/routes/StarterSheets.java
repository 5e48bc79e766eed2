package org.trammel.shop.routes;

/** The shipped routes as they would be released. */
public final class StarterSheets {

    private StarterSheets() {}

    public static RouteSheet of(String code) {
        return StarterRoutes.all().stream()
                .map(RouteFile::sheet)
                .filter(sheet -> sheet.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}

package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.records.Refusal;

class RouteFilesTest {

    private static final String SOUND = """
            route: R-1
            name: Route
            metal: STEEL
            kind: HARDTAIL
            operations:
              - code: "030"
                name: Saw
                station: "1"
                point: HOLD
                signers: [QA]
                irreversible: true
                steps:
                  - {text: Cut, lot: TUBE, starts: X}
                characteristics:
                  - {code: 030-1, name: Length, unit: mm, decimals: 1, nominal: design, lower: -0.5, upper: 0.5, gauge: TAPE, points: [one], rule: PLAIN, signers: [WORKER]}
                  - {use: set, as: "030", leave-out: ["8"], each: {deciding: false}, change: {"7": {upper: 2}}}
            clocks:
              - {code: X, name: Clock, kind: WINDOW, hours: 0.5, started-by: "030", gates: ["190"]}
            """;

    private static final Map<String, String> OTHERS =
            Map.of("sets/set.yaml", """
            - {code: "7", name: Seven, unit: mm, decimals: 1, upper: 1, gauge: TAPE, points: [one], rule: PLAIN, signers: [WORKER]}
            - {code: "8", name: Eight, unit: mm, decimals: 1, upper: 1, gauge: TAPE, points: [one], rule: PLAIN, signers: [WORKER]}
            """, "operations/round.yaml", "use: round", "operations/list.yaml", "- a\n- b");

    private static RouteFile read(String text) {
        return new RouteFiles(path -> path.equals("r.yaml") ? text : OTHERS.get(path)).read("r.yaml");
    }

    @Test
    void aSoundFileIsReadWithItsSetsUnderTheirOwnCodes() {
        RouteSheet sheet = read(SOUND).sheet();
        OperationSheet saw = sheet.operations().get(0);
        assertThat(saw.characteristics()).extracting(CharacteristicSheet::code).containsExactly("030-1", "030-7");
        assertThat(saw.characteristics().get(0).fromDesign()).isTrue();
        assertThat(saw.characteristics().get(1).deciding()).isFalse();
        assertThat(saw.characteristics().get(1).upperDeviation()).isEqualByComparingTo("2");
        assertThat(saw.characteristics().get(1).source()).isEqualTo("shop default");
        assertThat(sheet.clocks().get(0).minutes()).isEqualTo(30);
        assertThat(saw.steps().get(0).startsClock()).isEqualTo("X");
    }

    @ParameterizedTest(name = "{0} → {1}: line {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    metal: STEEL | metal: CHEESE | 3 | metal is one of
                    kind: HARDTAIL | knd: HARDTAIL | 4 | there is no part "knd"
                    name: Saw | nane: Saw | 7 | there is no part "nane"
                    point: HOLD | point: STOP | 9 | point is one of NONE, HOLD, WITNESS
                    signers: [QA] | signers: QA | 10 | signers is a list
                    signers: [QA] | signers: [BOSS] | 10 | signers is one of
                    irreversible: true | irreversible: yes | 11 | true or false
                    decimals: 1, nominal | decimals: 1.5, nominal | 15 | whole number
                    lower: -0.5 | lower: "-0,5" | 15 | with a decimal point
                    lower: -0.5 | lower: 1e5 | 15 | with a decimal point
                    lower: -0.5 | lower: NaN | 15 | with a decimal point
                    points: [one], rule: PLAIN, signers: [WORKER]} | rule: PLAIN} | 15 | points is missing
                    rule: PLAIN | reduce: MODE, rule: PLAIN | 15 | reduce is one of
                    use: set | use: sett | 16 | there is no file sets/sett.yaml
                    use: set | use: ../../application | 16 | there is no file
                    leave-out: ["8"] | leave-out: ["9"] | 16 | the set has no 9
                    "7": {upper | "6": {upper | 16 | no characteristic 6
                    hours: 0.5 | hours: 0.001 | 18 | whole minutes
                    hours: 0.5 | hours: 1, minutes: 60 | 18 | either hours or minutes
                    code: "030" | use: round | 1 | more than 5 deep
                    code: "030" | use: list | 1 | named parts are expected
                    code: "030" | {code: "030" | 7 | expected
                    name: Route | route: R-1 | 2 | stands here twice
                    """)
    void aBadFileIsRefusedWithItsLineAndTheReason(String from, String to, int line, String why) {
        String spoiled = SOUND.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
        assertThat(spoiled).isNotEqualTo(SOUND);
        assertThatThrownBy(() -> read(spoiled)).isInstanceOfSatisfying(Refusal.class, refused -> {
            assertThat(refused.why()).contains("line " + line).contains(why);
            assertThat(refused.what()).contains("r.yaml");
            assertThat(refused.instead()).contains("line " + line);
        });
    }

    @Test
    void anEmptyMissingOrEndlessFileIsRefused() {
        assertThatThrownBy(() -> read("")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new RouteFiles(path -> null).read("r.yaml")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> read("a: ".repeat(100_000))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> read("[".repeat(5_000))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> read("a: &a [*a]")).isInstanceOf(Refusal.class);
    }

    @Test
    void aFileCanNameNoClass() {
        assertThatThrownBy(() -> read("!!java.io.File [x]")).isInstanceOf(Refusal.class);
    }

    /** Whatever a slip or a broken disk makes of a file, it is read or refused, and nothing else happens. */
    @Test
    void aFileSpoiledAtRandomIsReadOrRefused() throws IOException {
        String[] texts = {
            SOUND,
            Files.readString(Path.of("src/main/resources/routes/fs-7005-sa.yaml")),
            Files.readString(Path.of("src/main/resources/routes/operations/080-after-weld.yaml"))
        };
        Random random = new Random(20260318);
        String signs = "{}[]:,-\"'&*!|>%@#\n\t 09azé\u202E\0";
        int refused = 0;
        for (int i = 0; i < 3_000; i++) {
            StringBuilder text = new StringBuilder(texts[i % texts.length]);
            for (int n = random.nextInt(4); n >= 0; n--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
                    case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
                    default -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(30)));
                }
            }
            try {
                read(text.toString());
            } catch (Refusal expected) {
                assertThat(expected.why()).contains("line ");
                refused++;
            }
        }
        assertThat(refused).isPositive();
    }
}

package org.trammel.shop.travellers;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** What is hung on a frame is hung on that frame, and is what it is said to be. */
@ShopTest
class RemarksTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private Remarks remarks;

    private WholeShop shop;
    private long worker;
    private WholeShop.Frame frame;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        frame = frame();
    }

    private WholeShop.Frame frame() {
        return shop.frame(
                SmallRoute.of(SmallRoute.op("040").step("deburr").sheet()).sheet());
    }

    @Test
    void aPhotographIsAPicture() {
        long step = shop.at(frame).steps().get(0).stepId();
        for (Remarks.Sent sent : List.of(
                new Remarks.Sent("no picture at all".getBytes(UTF_8), "text/plain", "a.txt"),
                new Remarks.Sent("%PDF-1.4 no picture".getBytes(UTF_8), "image/jpeg", "a.jpg"))) {
            assertThat(refusal(() -> remarks.photo(shop.act(worker), step, sent))
                            .field())
                    .isEqualTo("file");
        }
        assertThat(shop.sheet(frame).notes()).isEmpty();
        assertThat(beans.getBean(PhotoRepository.class).findAll()).noneMatch(p -> p.stepId() == step);
    }

    @Test
    void aNoteThatIsTooLongIsToBeShortened() {
        Refusal tooLong = refusal(() -> remarks.note(shop.act(worker), frame.travellerId(), null, "x".repeat(4001)));
        assertThat(tooLong.why()).contains("4001", "4000");
        assertThat(tooLong.instead()).contains("Shorten it by 1");
        remarks.note(shop.act(worker), frame.travellerId(), null, "x".repeat(4000));
        assertThat(refusal(() -> remarks.note(shop.act(worker), frame.travellerId(), null, " "))
                        .instead())
                .isEqualTo("Write what is different on this frame.");
    }

    @Test
    void aNoteCarriesNoSignThatCannotBeSeen() {
        // U+0000 is no character of text to PostgreSQL; U+202E turns what follows it around (Unicode Standard Annex 9).
        for (String unseen : List.of("\u0000", "\u202E", "\u2066", "\u001B")) {
            Refusal refused = refusal(
                    () -> remarks.note(shop.act(worker), frame.travellerId(), null, "bottle boss " + unseen + "low"));
            assertThat(refused.field()).isEqualTo("words");
            assertThat(refused.why()).contains("cannot be seen");
        }
        assertThat(shop.sheet(frame).notes()).isEmpty();
    }

    @Test
    void aNoteOrACallNamesAnOperationOfItsOwnFrame() {
        long others = shop.at(frame()).line().operationId();
        assertThat(refusal(() -> remarks.note(shop.act(worker), frame.travellerId(), others, "left port"))
                        .field())
                .isEqualTo("operation");
        assertThat(refusal(() -> remarks.call(shop.act(worker), frame.travellerId(), others, "look"))
                        .field())
                .isEqualTo("operation");
        assertThat(refusal(() -> remarks.call(shop.act(worker), Long.MAX_VALUE, null, "look"))
                        .kind())
                .isEqualTo(Refusal.Kind.MISSING);
        remarks.note(
                shop.act(worker), frame.travellerId(), shop.at(frame).line().operationId(), "left port");
        assertThat(shop.sheet(frame).notes()).hasSize(1);
    }

    private static Refusal refusal(ThrowingCallable deed) {
        return catchThrowableOfType(Refusal.class, deed);
    }
}

package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.shop.records.Refusal;

class SecretRulesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "12345",
                "1234567890123",
                "12345a",
                "111111",
                "000000",
                "123456",
                "654321",
                "890123",
                "012345",
                "٤٠٢٨١٧"
            })
    void aPinThatIsShortOrGuessedFirstIsRefused(String pin) {
        assertThatThrownBy(() -> SecretRules.checkPin("pin", pin)).isInstanceOf(Refusal.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"402817", "112233", "121212", "0000001", "135790"})
    void noOtherRuleIsMadeForAPin(String pin) {
        assertThatNoException().isThrownBy(() -> SecretRules.checkPin("pin", pin));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "elevenchars", "aaaaaaaaaaaaaaaa", "abababababab", "i am Odd Owner yes"})
    void aPasswordThatIsShortOrNamesItsOwnerIsRefused(String password) {
        assertThatThrownBy(() -> SecretRules.checkPassword("password", password, "OO", "Odd Owner"))
                .isInstanceOf(Refusal.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"quiet lathe under rain", "twelve chars", "ääkköset ja öljy"})
    void noKindOfCharacterIsAskedForInAPassword(String password) {
        assertThatNoException().isThrownBy(() -> SecretRules.checkPassword("password", password, "OO", "Odd Owner"));
    }
}

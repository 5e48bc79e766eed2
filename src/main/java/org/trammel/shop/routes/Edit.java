package org.trammel.shop.routes;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.Locale;

/** One change to a draft. Programs name it by the property {@code edit}. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "edit")
@JsonSubTypes({
    @JsonSubTypes.Type(value = OperationEdit.Add.class, name = "add-operation"),
    @JsonSubTypes.Type(value = OperationEdit.Change.class, name = "change-operation"),
    @JsonSubTypes.Type(value = OperationEdit.Move.class, name = "move-operation"),
    @JsonSubTypes.Type(value = OperationEdit.Split.class, name = "split-operation"),
    @JsonSubTypes.Type(value = OperationEdit.Retire.class, name = "retire-operation"),
    @JsonSubTypes.Type(value = OperationEdit.Restore.class, name = "restore-operation"),
    @JsonSubTypes.Type(value = StepEdit.Add.class, name = "add-step"),
    @JsonSubTypes.Type(value = StepEdit.Change.class, name = "change-step"),
    @JsonSubTypes.Type(value = StepEdit.Move.class, name = "move-step"),
    @JsonSubTypes.Type(value = StepEdit.Split.class, name = "split-step"),
    @JsonSubTypes.Type(value = StepEdit.Retire.class, name = "retire-step"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Add.class, name = "add-characteristic"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Change.class, name = "change-characteristic"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Move.class, name = "move-characteristic"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Split.class, name = "split-characteristic"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Retire.class, name = "retire-characteristic"),
    @JsonSubTypes.Type(value = CharacteristicEdit.Restore.class, name = "restore-characteristic"),
    @JsonSubTypes.Type(value = ClockEdit.Add.class, name = "add-clock"),
    @JsonSubTypes.Type(value = ClockEdit.Change.class, name = "change-clock"),
    @JsonSubTypes.Type(value = ClockEdit.Retire.class, name = "retire-clock"),
    @JsonSubTypes.Type(value = PartEdit.Add.class, name = "add-part"),
    @JsonSubTypes.Type(value = PartEdit.Retire.class, name = "retire-part")
})
sealed interface Edit permits OperationEdit, StepEdit, CharacteristicEdit, ClockEdit, PartEdit {

    /** The draft as it is after this; refuses what cannot be done. */
    Draft in(Draft draft);

    /** Code of what it changes: an operation's, a characteristic's, a clock's or a part's. */
    String place();

    /** Its name in the log, such as {@code step-split}. */
    default String event() {
        String thing = getClass().getEnclosingClass().getSimpleName().replace("Edit", "");
        return (thing + "-" + getClass().getSimpleName()).toLowerCase(Locale.ROOT);
    }
}

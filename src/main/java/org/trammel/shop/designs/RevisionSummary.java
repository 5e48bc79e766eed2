package org.trammel.shop.designs;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One revision in the history of a design: what happened to it, when and by whom. Free text is named
 * by the id of its kept words.
 *
 * @param drawing SHA-256 of the drawing file
 * @param approvedBy who entered the customer's approval
 * @param approvedOn the day the customer approved
 * @param approverWords the approver's name, erased with the customer
 */
public record RevisionSummary(
        long revisionId,
        long designId,
        String letter,
        int position,
        DesignState state,
        String description,
        long version,
        @Nullable String drawing,
        @Nullable String drawingName,
        @Nullable Long reasonWords,
        long begunBy,
        Instant begunAt,
        @Nullable Long sentBy,
        @Nullable Instant sentAt,
        @Nullable Long approvedBy,
        @Nullable Instant approvedAt,
        @Nullable LocalDate approvedOn,
        @Nullable Long approverWords,
        @Nullable Instant checkedAt,
        @Nullable Long releasedBy,
        @Nullable Instant releasedAt,
        @Nullable Instant supersededAt,
        @Nullable Long withdrawnBy,
        @Nullable Instant withdrawnAt,
        @Nullable Long withdrawnWords) {}

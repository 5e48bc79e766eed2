package org.trammel.shop.routes;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.PreRemove;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

/** A part made apart: in a draft its route, in a released revision the child's revision too. */
@Entity
@Table(name = "route_child")
class ChildRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "revision_id", nullable = false)
    private RouteRevision revision;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String part = "";

    @Column(nullable = false)
    private String name;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "child_route_id", nullable = false)
    private RouteRow route;

    @Column(name = "child_revision_id")
    private @Nullable Long childRevisionId;

    void becomes(RouteRevision owner, int position, Part wanted) {
        revision = owner;
        sequence = position;
        part = wanted.part();
        name = wanted.name();
        route = wanted.route();
    }

    void pin(long revisionId) {
        childRevisionId = revisionId;
    }

    @PreUpdate
    @PreRemove
    void onlyInADraft() {
        revision.guardContent();
    }

    String part() {
        return part;
    }

    String name() {
        return name;
    }

    RouteRow route() {
        return route;
    }

    @Nullable
    Long childRevisionId() {
        return childRevisionId;
    }
}

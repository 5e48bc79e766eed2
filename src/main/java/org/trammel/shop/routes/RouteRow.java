package org.trammel.shop.routes;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.BatchSize;

/** What a route is for; what it says is in its revisions. */
@Entity
@Table(name = "route")
@BatchSize(size = 20)
class RouteRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String metal;

    @Column(nullable = false)
    private String kind;

    protected RouteRow() {}

    RouteRow(String code, String name, String metal, String kind) {
        this.code = code;
        this.name = name;
        this.metal = metal;
        this.kind = kind;
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    String name() {
        return name;
    }

    String metal() {
        return metal;
    }

    String kind() {
        return kind;
    }
}

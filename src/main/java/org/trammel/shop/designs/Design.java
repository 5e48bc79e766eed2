package org.trammel.shop.designs;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** The design of one order's frame; what it is stands in its revisions. */
@Entity
@Table(name = "design")
class Design {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "drawn_for")
    private String drawnFor;

    @Version
    private long version;

    protected Design() {}

    Design(String drawnFor) {
        this.drawnFor = drawnFor;
    }

    long id() {
        return id;
    }

    String drawnFor() {
        return drawnFor;
    }
}

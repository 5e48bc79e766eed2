package org.trammel.shop.people;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "person")
class PersonRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false, updatable = false)
    private String initials;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String badge;

    @Column(name = "joined_on", nullable = false)
    private LocalDate joinedOn;

    @Column(name = "left_on")
    private @Nullable LocalDate leftOn;

    @Column(name = "pin_hash")
    private @Nullable String pinHash;

    @Column(name = "pin_set_at")
    private @Nullable Instant pinSetAt;

    @Column(name = "pin_one_time", nullable = false)
    private boolean pinOneTime;

    @Column(name = "password_hash")
    private @Nullable String passwordHash;

    @Column(name = "password_set_at")
    private @Nullable Instant passwordSetAt;

    @Column(name = "password_one_time", nullable = false)
    private boolean passwordOneTime;

    @ElementCollection
    @CollectionTable(name = "person_role", joinColumns = @JoinColumn(name = "person_id"))
    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "role", nullable = false)
    private Set<Role> roles = EnumSet.noneOf(Role.class);

    @Version
    private @Nullable Long version;

    protected PersonRow() {}

    PersonRow(String initials, String name, String badge, LocalDate joinedOn, Set<Role> roles) {
        this.initials = initials;
        this.name = name;
        this.badge = badge;
        this.joinedOn = joinedOn;
        this.roles.addAll(roles);
    }

    void rename(String name) {
        this.name = name;
    }

    void holds(Set<Role> held) {
        roles.clear();
        roles.addAll(held);
    }

    void leave(LocalDate on) {
        this.leftOn = on;
        this.pinHash = null;
        this.passwordHash = null;
    }

    void givePin(String hash, boolean oneTime, Instant at) {
        this.pinHash = hash;
        this.pinOneTime = oneTime;
        this.pinSetAt = at;
    }

    void givePassword(String hash, boolean oneTime, Instant at) {
        this.passwordHash = hash;
        this.passwordOneTime = oneTime;
        this.passwordSetAt = at;
    }

    void wear(String badge) {
        this.badge = badge;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("The person is not stored yet");
        }
        return id;
    }

    String initials() {
        return initials;
    }

    String name() {
        return name;
    }

    String badge() {
        return badge;
    }

    LocalDate joinedOn() {
        return joinedOn;
    }

    @Nullable
    LocalDate leftOn() {
        return leftOn;
    }

    boolean active() {
        return leftOn == null;
    }

    @Nullable
    String pinHash() {
        return pinHash;
    }

    @Nullable
    Instant pinSetAt() {
        return pinSetAt;
    }

    @Nullable
    Instant passwordSetAt() {
        return passwordSetAt;
    }

    boolean pinOneTime() {
        return pinOneTime;
    }

    @Nullable
    String passwordHash() {
        return passwordHash;
    }

    boolean passwordOneTime() {
        return passwordOneTime;
    }

    Set<Role> roles() {
        return roles;
    }
}

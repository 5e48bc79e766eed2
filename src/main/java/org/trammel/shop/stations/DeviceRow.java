package org.trammel.shop.stations;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "device")
class DeviceRow {

    enum Kind {
        TABLET,
        DESK
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Kind kind;

    @Column(nullable = false)
    private String name;

    @Column(name = "token_hash")
    private @Nullable String tokenHash;

    @Column(name = "made_at", nullable = false)
    private Instant madeAt;

    @Column(name = "made_by", nullable = false)
    private long madeBy;

    @Column(name = "token_at")
    private @Nullable Instant tokenAt;

    @Column(name = "withdrawn_at")
    private @Nullable Instant withdrawnAt;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "device_station", joinColumns = @JoinColumn(name = "device_id"))
    @Column(name = "station_code", nullable = false)
    private Set<String> stations = new TreeSet<>();

    @Version
    private @Nullable Long version;

    protected DeviceRow() {}

    DeviceRow(Kind kind, String name, Collection<String> stations, Instant at, long by) {
        this.kind = kind;
        this.name = name;
        this.stations = new TreeSet<>(stations);
        this.madeAt = at;
        this.madeBy = by;
    }

    void serves(Collection<String> codes) {
        stations.clear();
        stations.addAll(codes);
    }

    void carries(String hash, Instant at) {
        this.tokenHash = hash;
        this.tokenAt = at;
    }

    void withdraw(Instant at) {
        this.withdrawnAt = at;
        this.tokenHash = null;
    }

    void takeBack() {
        this.withdrawnAt = null;
    }

    boolean withdrawn() {
        return withdrawnAt != null;
    }

    boolean tablet() {
        return kind == Kind.TABLET;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("The device is not stored yet");
        }
        return id;
    }

    Device sheet() {
        return new Device(id(), name, tablet(), stations.stream().sorted().toList(), tokenAt, withdrawn());
    }
}

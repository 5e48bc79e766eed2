package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.handwork.Coupons;
import org.trammel.shop.handwork.Handwork;
import org.trammel.shop.handwork.SerialReads;
import org.trammel.shop.handwork.ToolKind;
import org.trammel.shop.handwork.Tools;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.routes.Proof;

/** What the crew records at the bench before a tick: the tool in the hand, air and metal, the serial read back. */
@Component
@Profile("demo")
class DemoHandwork {

    /** Reads a serial back that somebody else struck. */
    private static final String READER = "SB";

    private final DemoActs acts;
    private final Tools tools;
    private final Handwork handwork;
    private final SerialReads serials;
    private final Coupons coupons;

    DemoHandwork(DemoActs acts, Tools tools, Handwork handwork, SerialReads serials, Coupons coupons) {
        this.acts = acts;
        this.tools = tools;
        this.handwork = handwork;
        this.serials = serials;
        this.coupons = coupons;
    }

    /** The tools that touch metal, each kept for one family. */
    void register() {
        for (MetalFamily family : MetalFamily.values()) {
            String short2 = family.name().substring(0, 2);
            tool("BR-" + short2 + "-1", ToolKind.BRUSH, "stainless hand brush", family, false);
            tool("CT-" + short2 + "-1", ToolKind.CLOTH, "lint-free cloths, box", family, false);
            tool("CL-" + short2 + "-1", ToolKind.CLEANER, "acetone, spray bottle", family, false);
        }
        tool("CL-ST-9", ToolKind.CLEANER, "degreaser for machine parts", MetalFamily.STEEL, true);
    }

    /** Ten coupons of 6061, which give a window; four of 7005, which give none yet. */
    void readCoupons() {
        coupons(
                "AL6061",
                "heat 5K2217",
                "42.8",
                "43.1",
                "43.4",
                "42.6",
                "43.0",
                "43.9",
                "42.3",
                "43.3",
                "42.9",
                "43.6");
        coupons("AL7005", "heat 70A118", "35.9", "36.4", "36.1", "35.6");
    }

    private void coupons(String metal, String heat, String... read) {
        for (int i = 0; i < read.length; i++) {
            coupons.read(
                    acts.by("TR"),
                    new Coupons.Read(
                            metal, metal + "-" + (i + 1), heat + ", certificate 3.1", new BigDecimal(read[i]), "CD-1"));
        }
    }

    private void tool(String code, ToolKind kind, String what, MetalFamily family, boolean chlorinated) {
        tools.register(acts.by("TR"), code, kind, what, family, chlorinated);
    }

    void prove(long operationId, String metal, String serial, Proof proof, String by) {
        String short2 = MetalFamily.of(metal).name().substring(0, 2);
        switch (proof) {
            case CLEANED -> {
                handwork.touched(acts.by(by), operationId, "CL-" + short2 + "-1");
                handwork.touched(acts.by(by), operationId, "CT-" + short2 + "-1");
            }
            case BRUSHED -> handwork.touched(acts.by(by), operationId, "BR-" + short2 + "-1");
            case WARM_DRY ->
                handwork.measured(
                        acts.by(by),
                        operationId,
                        new MetalAir(
                                new BigDecimal("21.0"), new BigDecimal("48"), new BigDecimal("19.5"), "TH-1", "IR-1"));
            case WATER_BREAK ->
                handwork.water(
                        acts.by(by),
                        operationId,
                        new Handwork.WaterSeen(
                                true, List.of("down tube", "top tube", "seat tube", "chainstays", "seatstays")));
            case SERIAL_READ -> serials.readBack(acts.by(READER), operationId, serial);
            default -> {
                // rests on nothing that is recorded before it
            }
        }
    }
}

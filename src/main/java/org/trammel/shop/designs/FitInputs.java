package org.trammel.shop.designs;

import org.trammel.calc.geometry.BarFit;
import org.trammel.calc.geometry.FitSheet;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.SaddleFit;
import org.trammel.calc.units.Answer;

/** The fit sheet of a drawing and the parts that reach it. */
record FitInputs(GivenInputs in) {

    /** Where the saddle's clamp stands by its height. */
    Answer<SaddleFit> saddle(FrameGeometry frame) {
        return in.all(GeometryInput.SADDLE_HEIGHT, GeometryInput.SADDLE_STACK)
                .then(there -> SaddleFit.of(
                        frame, in.number(GeometryInput.SADDLE_HEIGHT), in.number(GeometryInput.SADDLE_STACK)));
    }

    /** Where the bar stands by all four of the sheet. */
    Answer<BarFit> bar(FrameGeometry frame) {
        return in.all(
                        GeometryInput.SADDLE_HEIGHT,
                        GeometryInput.SADDLE_SETBACK,
                        GeometryInput.SADDLE_TO_BAR,
                        GeometryInput.SADDLE_OVER_BAR)
                .then(there -> BarFit.of(
                        frame,
                        new FitSheet(
                                in.number(GeometryInput.SADDLE_HEIGHT),
                                in.number(GeometryInput.SADDLE_SETBACK),
                                in.number(GeometryInput.SADDLE_TO_BAR),
                                in.number(GeometryInput.SADDLE_OVER_BAR))));
    }

    /** Where stem and spacers bring the bar; spacers that are not given are none. */
    Answer<BarFit.ByParts> byParts(FrameGeometry frame, BarFit bar) {
        return in.all(
                        GeometryInput.UPPER_STACK,
                        GeometryInput.STEM_HEIGHT,
                        GeometryInput.STEM_LENGTH,
                        GeometryInput.STEM_RISE)
                .then(there -> bar.by(
                        frame,
                        new BarFit.Parts(
                                in.number(GeometryInput.UPPER_STACK),
                                in.number(GeometryInput.SPACERS, 0),
                                in.number(GeometryInput.STEM_HEIGHT),
                                in.number(GeometryInput.STEM_LENGTH),
                                Math.toRadians(in.number(GeometryInput.STEM_RISE)))));
    }
}

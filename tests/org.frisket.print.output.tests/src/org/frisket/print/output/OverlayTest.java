package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.Resolution;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.Projection;
import org.frisket.print.register.Registration;
import org.frisket.sheets.LaidSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The print file and the file to cut, laid over each other as renderers of other projects see them: pdftocairo
 * (poppler with cairo, whose edges are told finer than those of its own painter) the print, librsvg the cuts. A
 * printer and a sheet that lies askew are simulated by drawing the page anew, place by place.
 */
class OverlayTest {

	/** In mm; pixels are 0.05 mm wide, and their grey values tell the rest. */
	private static final double NEAR = 0.01;
	private static final int PER_MM = RasterPage.PER_MM;
	private static final int FINE = 3;
	private static final Bounds CARD = new Bounds(58, 48, 142, 102);

	@TempDir
	private Path folder;
	private final SampleSheet sample = new SampleSheet();

	/**
	 * Squares of 10 mm that are printed and drawn along the same line, near the corners of the card and in its middle.
	 */
	private static final List<Point> CORNERS = List.of(new Point(4, 4), new Point(66, 6), new Point(35, 20), new Point(6, 36),
			new Point(65, 35));
	private static final double SIDE = 10;

	@BeforeEach
	void addSquares() {
		addSquares(sample.layer);
	}

	private static void addSquares(Layer layer) {
		for (Point corner : CORNERS) {
			Outline square = SampleSheet.outline(layer, "M%1$s %2$sh10v10h-10Z".formatted(corner.x(), corner.y()),
					OperationKind.PRINT);
			Jobs.addOperation(square, OperationKind.DRAW);
		}
	}

	private BufferedImage printed(PrintSheet print) throws Exception {
		return printed(print, 1);
	}

	private BufferedImage printed(PrintSheet print, int page) throws Exception {
		Path pdf = Files.write(folder.resolve("print.pdf"), SampleSheet.pdf(print));
		RasterPage.output("pdftocairo", "-png", "-r", Double.toString(25.4 * PER_MM), "-f", Integer.toString(page), "-singlefile", pdf.toString(),
				folder.resolve("print").toString());
		return ImageIO.read(folder.resolve("print.png").toFile());
	}

	private BufferedImage cut(PrintSheet print, Optional<Registration> fit) throws Exception {
		return CutRaster.of(new PrintAndCut(print, fit, Optional.empty(), List.of()).cut(false, false, Tolerance.DEFAULT, Monitor.NONE)
				.orElseThrow(), folder);
	}

	/**
	 * How far the edges of the squares and the lines along them are from each other at most. @param lies from the
	 * design to both
	 */
	private static double apart(BufferedImage print, BufferedImage cut, UnaryOperator<Point> lies) {
		double worst = 0;
		for (Point corner : CORNERS) {
			for (double along : new double[] { 2.5, 5, 7.5 }) {
				// the card lies at 60, 50
				double left = 60 + corner.x();
				double top = 50 + corner.y();
				Point middle = lies.apply(new Point(left + SIDE / 2, top + SIDE / 2));
				worst = Math.max(worst, across(print, cut, lies.apply(new Point(left, top + along)), middle, false));
				worst = Math.max(worst, across(print, cut, lies.apply(new Point(left + SIDE, top + along)), middle, false));
				worst = Math.max(worst, across(print, cut, lies.apply(new Point(left + along, top)), middle, true));
				worst = Math.max(worst, across(print, cut, lies.apply(new Point(left + along, top + SIDE)), middle, true));
			}
		}
		return worst;
	}

	/** At one place of an edge. @param inked the middle of the ink */
	private static double across(BufferedImage print, BufferedImage cut, Point place, Point inked, boolean down) {
		double inwards = Math.signum(down ? inked.y() - place.y() : inked.x() - place.x());
		double middle = down ? place.y() : place.x();
		double at = down ? place.x() : place.y();
		return Math.abs(CutRaster.edge(print, middle - inwards, middle + inwards, at, down)
				- CutRaster.middle(cut, middle - 1, middle + 1, at, down));
	}

	/**
	 * The page as it would come to lie: each pixel is the mean of places that are looked for on the page.
	 *
	 * @param parts of the page that matter, in mm; the rest is bare paper
	 */
	private static BufferedImage drawnAnew(BufferedImage page, UnaryOperator<Point> back, int width, int height, List<Bounds> parts) {
		BufferedImage anew = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				Point middle = back.apply(new Point((x + 0.5) / PER_MM, (y + 0.5) / PER_MM));
				if (parts.stream().noneMatch(part -> part.contains(middle))) {
					anew.setRGB(x, y, 0xffffff);
					continue;
				}
				double sum = 0;
				for (int v = 0; v < FINE; v++) {
					for (int u = 0; u < FINE; u++) {
						Point mm = new Point((x + (u + 0.5) / FINE) / PER_MM, (y + (v + 0.5) / FINE) / PER_MM);
						sum += shade(page, back.apply(mm).times(PER_MM));
					}
				}
				int grey = (int) Math.round(sum / FINE / FINE);
				anew.setRGB(x, y, grey << 16 | grey << 8 | grey);
			}
		}
		return anew;
	}

	/** Between the middles of pixels; paper beyond the page. */
	private static double shade(BufferedImage page, Point at) {
		int x = (int) Math.floor(at.x() - 0.5);
		int y = (int) Math.floor(at.y() - 0.5);
		if (x < 0 || y < 0 || x + 1 >= page.getWidth() || y + 1 >= page.getHeight()) {
			return 255;
		}
		double u = at.x() - 0.5 - x;
		double v = at.y() - 0.5 - y;
		return (1 - v) * ((1 - u) * green(page, x, y) + u * green(page, x + 1, y))
				+ v * ((1 - u) * green(page, x, y + 1) + u * green(page, x + 1, y + 1));
	}

	private static int green(BufferedImage page, int x, int y) {
		return page.getRGB(x, y) >> 8 & 0xff;
	}

	private static Registration fit(BufferedImage photograph, MarkPlan plan) throws Exception {
		int[] pixels = photograph.getRGB(0, 0, photograph.getWidth(), photograph.getHeight(), null, 0, photograph.getWidth());
		byte[] grey = new byte[pixels.length];
		for (int i = 0; i < grey.length; i++) {
			grey[i] = (byte) (pixels[i] & 0xff);
		}
		FoundMarks found = MarkFinder.find(plan, new Grey(photograph.getWidth(), photograph.getHeight(), grey), 25.4 * PER_MM,
				Monitor.NONE);
		assertEquals(4, found.count(), found.findings().toString());
		return SheetMarks.sound(found.registration(FitKind.PROJECTIVE, Resolution.given(25.4 * PER_MM)));
	}

	/** The turned sheet under a camera, askew in its own way: marks of the back are found, and its work follows them. */
	@ParameterizedTest
	@EnumSource
	void workOfTheBackFollowsItsOwnMarks(TurnEdge turn) throws Exception {
		sample.layer.getElements().removeIf(each -> each != sample.card);
		Layer reverse = Jobs.addLayer(sample.job, "Back");
		reverse.setBack(true);
		reverse.setColour("#000000");
		addSquares(reverse);
		SampleSheet.outline(sample.layer, "M30 15H40V20H30Z", OperationKind.PRINT);
		sample.sheet.getPlacements().get(0).setX(100);
		PrintSheet print = sample.print(new PrintOptions(3, false, turn, true, true, false, Optional.empty()));
		Transform over = turn.over(200, 150);
		Projection lies = Projection.of(Transform.rotation(-0.009).then(Transform.translation(5, 4)))
				.then(new Projection(1, 0, 0, 0, 1, 0, -3e-5, 4e-5, 1));
		List<Bounds> parts = new ArrayList<>(List.of(CARD));
		MarkPlan plan = turn.over(print.plan().orElseThrow());
		plan.marks().forEach(mark -> parts.add(mark.bounds().grown(1)));
		BufferedImage photograph = drawnAnew(printed(print, 2), lies.inverse()::apply, 212 * PER_MM, 160 * PER_MM, parts);
		Registration fit = fit(photograph, plan);
		UnaryOperator<Point> seen = place -> lies.apply(over.apply(place));
		double apart = apart(photograph, cutBack(print, Optional.of(fit)), seen);
		assertTrue(apart < NEAR, apart + " mm");
		double without = apart(photograph, cutBack(print, Optional.empty()), seen);
		assertTrue(!(without < 0.2), "it matters: " + without + " mm");
	}

	private BufferedImage cutBack(PrintSheet print, Optional<Registration> fit) throws Exception {
		return CutRaster.of(new PrintAndCut(print, Optional.empty(), fit, List.of()).cut(true, false, Tolerance.DEFAULT, Monitor.NONE)
				.orElseThrow(), folder);
	}

	@Test
	void bothFilesAreInOneFrame() throws Exception {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		double apart = apart(printed(print), cut(print, Optional.empty()), UnaryOperator.identity());
		assertTrue(apart < NEAR, apart + " mm");
	}

	/** The moves of a machine, as hp2xx reads them, which knows nothing of pages: places there are steps of 0.025 mm. */
	@Test
	void thePlotIsInTheSameFrameToo() throws Exception {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		LaidSheet cut = new PrintAndCut(print, Optional.empty(), Optional.empty(), List.of()).cut(false, false, Tolerance.DEFAULT,
				Monitor.NONE).orElseThrow();
		double apart = apart(printed(print), CutRaster.plotted(cut, 200, 150, folder), UnaryOperator.identity());
		assertTrue(apart < 0.0125 + NEAR, apart + " mm");
	}

	/** What a printer does to the sheet is undone beforehand, so that its print lies where is cut as designed. */
	@Test
	void aPrinterThatStretchesPrintsWhereIsCut() throws Exception {
		PrinterProfile desk = new PrinterProfile("Front desk", 1.003, 0.998, Math.toRadians(0.12), LocalDate.of(2026, 11, 30), 4);
		PrintSheet print = sample.print(PrintOptions.USUAL.on(desk));
		Transform printer = desk.forCuts(new Point(100, 75));
		BufferedImage paper = drawnAnew(printed(print), printer.inverse()::apply, 200 * PER_MM, 150 * PER_MM, List.of(CARD));
		double apart = apart(paper, cut(print, Optional.empty()), UnaryOperator.identity());
		assertTrue(apart < NEAR, apart + " mm");
		// and it does matter: 0.3 % of 60 mm
		BufferedImage asDesigned = printed(sample.print(PrintOptions.USUAL));
		double without = apart(drawnAnew(asDesigned, printer.inverse()::apply, 200 * PER_MM, 150 * PER_MM, List.of(CARD)),
				cut(print, Optional.empty()), UnaryOperator.identity());
		assertTrue(without > 0.08, without + " mm");
	}

	/** A sheet that lies askew under a camera: marks are found in the picture, and cuts follow all of it. */
	@Test
	void cutsFollowAPrintThatLiesAskew() throws Exception {
		PrintSheet print = sample.print(PrintOptions.USUAL);
		Projection lies = Projection.of(Transform.rotation(0.012).then(Transform.translation(6, 3)))
				.then(new Projection(1, 0, 0, 0, 1, 0, 4e-5, -3e-5, 1));
		Projection back = lies.inverse();
		List<Bounds> parts = new ArrayList<>(List.of(CARD));
		print.plan().orElseThrow().marks().forEach(mark -> parts.add(mark.bounds().grown(1)));
		BufferedImage photograph = drawnAnew(printed(print), back::apply, 212 * PER_MM, 160 * PER_MM, parts);
		Registration fit = fit(photograph, print.plan().get());
		double apart = apart(photograph, cut(print, Optional.of(fit)), lies::apply);
		assertTrue(apart < NEAR, apart + " mm");
		assertTrue(lies.apply(new Point(0, 0)).distance(new Point(6, 3)) < 0.1, "it is askew, and not elsewhere");
		assertTrue(new Bounds(0, 0, 212, 160).contains(lies.apply(new Point(200, 150))));
	}
}

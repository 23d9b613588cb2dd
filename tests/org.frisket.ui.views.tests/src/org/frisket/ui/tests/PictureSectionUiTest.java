package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.model.BackdropRule;
import org.frisket.model.Element;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.testkit.RenderedArt;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.imports.PageDialog;
import org.frisket.ui.bench.internal.imports.PictureReplacement;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The edge of a picture, set in the properties and seen on the bench. */
class PictureSectionUiTest extends OpenBench {

	/** Of the sail, on its ground: a triangle of 600 by 600 pixels in one of 800. */
	private static final int SIDE = 800;
	private static final Color GROUND = new Color(0xf4, 0xec, 0xdc);

	private PropertiesView view;
	private JobOnBench onBench;
	private String before;

	@Override
	protected Path jobFile() throws IOException {
		Job job = Jobs.create("HL-9", "Gift tags");
		Layer back = Jobs.addLayer(job, "Mat");
		back.setColour("#5b3a57");
		Layer photo = Jobs.addLayer(job, "Photo");
		Picture picture = Jobs.addPicture(photo, sail(), "image/png", 80, 80);
		Jobs.addOperation(picture, OperationKind.CUT);
		Jobs.addOperation(Jobs.addMat(back, 6, List.of(picture)), OperationKind.CUT);
		Path path = folder.resolve("sail.frjob");
		JobFile.save(job, path);
		return path;
	}

	@BeforeEach
	void openPicture() throws Exception {
		view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		onBench = Adapters.adapt(bench, JobOnBench.class);
		before = text(bench.document().job());
		page().activate(view);
		page().setPartState(page().getReference(view), IWorkbenchPage.STATE_RESTORED);
		onBench.select(List.of(picture()));
		Screen.settle();
	}

	@AfterEach
	void restore() {
		page().setPartState(page().getReference(view), IWorkbenchPage.STATE_RESTORED);
	}

	private static ImageBytes sail() throws IOException {
		BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setColor(GROUND);
		graphics.fillRect(0, 0, SIDE, SIDE);
		Path2D sail = new Path2D.Double();
		sail.moveTo(100, 700);
		sail.lineTo(700, 700);
		sail.lineTo(100, 100);
		sail.closePath();
		graphics.setColor(new Color(0x1d, 0x6f, 0x78));
		graphics.fill(sail);
		graphics.setColor(Color.WHITE);
		graphics.setStroke(new BasicStroke(12));
		graphics.drawLine(200, 600, 400, 600);
		graphics.dispose();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(image, "png", out);
		return ImageBytes.of(out.toByteArray());
	}

	private Picture picture() {
		return first(Picture.class);
	}

	private <E extends Element> E first(Class<E> kind) {
		return Jobs.elements(bench.document().job()).stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
	}

	private double area() {
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		return onBench.prepared().orElseThrow().element(picture().getId()).orElseThrow().region().area();
	}

	private void focus(String name) {
		Control field = view.field(name);
		Screen.waitUntil(name + " has the focus", () -> field.isFocusControl() || field.setFocus());
		Screen.settle();
	}

	private void enter(String name, String text) {
		focus(name);
		Screen.key("ctrl+a");
		Screen.type(text);
		Screen.key("Return");
		Screen.settle();
	}

	private void tick(String name) {
		focus(name);
		Screen.key("space");
		Screen.settle();
	}

	private void undoAll() throws IOException {
		while (bench.commandStack().canUndo()) {
			bench.commandStack().undo();
		}
		Screen.settle();
		assertEquals(before, text(bench.document().job()));
	}

	/** A triangle of 60 by 60 mm; a border of 2 mm goes round it. */
	@Test
	void edgeIsFoundMovedAndBled() throws Exception {
		assertFalse(view.field("Backdrop").isVisible());
		assertEquals(80 * 80, area(), 1e-6);
		tick("Follow the contour of its art");
		assertTrue(view.field("Backdrop").isVisible());
		assertEquals(60 * 60 / 2, area(), 2);
		enter("Border", "2mm");
		double perimeter = 60 * (2 + Math.sqrt(2));
		assertEquals(1800 + 2 * perimeter + Math.PI * 4, area(), 4);
		enter("Border", "0mm");
		enter("Bleed", "3mm");
		assertEquals(3, picture().getBleed());
		assertEquals("254 dots to the inch", ((Label) view.field("Resolution")).getText());
		area();
		bench.fit();
		Screen.settle();
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "pictureEdge");
		undoAll();
		assertFalse(view.field("Backdrop").isVisible());
	}

	@Test
	void colourOfTheBackdropIsTypedAndWhatIsNoneIsMarked() throws Exception {
		tick("Follow the contour of its art");
		assertFalse(view.field("Colour").isVisible());
		enter("Difference", "25");
		assertEquals(25, picture().getEdge().getDifference());
		bench.commandStack().undo();
		onBench.edits().execute(ChangePicture.backdrop(List.of(picture()), BackdropRule.COLOUR));
		Screen.settle();
		assertTrue(view.field("Colour").isVisible());
		enter("Colour", "teal");
		assertNull(picture().getEdge().getColour());
		assertEquals("teal", ((Text) view.field("Colour")).getText());
		enter("Colour", "F4ECDC");
		assertEquals("#f4ecdc", picture().getEdge().getColour());
		assertEquals(1800, area(), 2);
		undoAll();
	}

	@Test
	void sliderIsSeenAtOnceAndIsOneStep() throws Exception {
		tick("Follow the contour of its art");
		double sharp = area();
		Scale slider = (Scale) view.field("Border slider");
		focus("Border slider");
		int steps = bench.commandStack().getCommands().length;
		for (int i = 0; i < 3; i++) {
			Screen.key("Right");
		}
		Screen.settle();
		assertEquals(0.3, picture().getEdge().getBorder(), 1e-9);
		assertTrue(area() > sharp + 10);
		assertEquals(33, slider.getSelection());
		assertTrue(bench.commandStack().getCommands().length > steps);
		undoAll();
	}

	@Test
	void edgeBecomesAnOutlineByItsKey() throws Exception {
		tick("Follow the contour of its art");
		area();
		listen(bench);
		Screen.events("key", "ctrl+b", "q");
		Screen.settle();
		Outline outline = first(Outline.class);
		assertEquals(List.of(outline.getId()), selectedIds());
		assertNull(picture().getEdge());
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertEquals(1800, onBench.prepared().orElseThrow().element(outline.getId()).orElseThrow().region().area(), 2);
		undoAll();
	}

	@Test
	void anotherPictureTakesItsPlaceAndWhatIsNoneIsTold() throws Exception {
		tick("Follow the contour of its art");
		Path other = folder.resolve("quay.png");
		Files.write(other, RenderedArt.disc().open().readAllBytes());
		Path none = Files.writeString(folder.resolve("words.png"), "Harbour Lane");
		List<String> told = new ArrayList<>();
		replace(none, told);
		Screen.waitUntil("it is told", () -> !told.isEmpty());
		assertTrue(told.get(0).contains("words.png"), told.get(0));
		replace(other, told);
		Screen.waitUntil("it is another", () -> RenderedArt.disc().equals(picture().getImage()));
		assertEquals(80, picture().getWidth());
		assertEquals(60, picture().getHeight());
		double radius = RenderedArt.RADIUS * 80 / RenderedArt.WIDTH;
		assertEquals(Math.PI * radius * radius, area(), 2);
		undoAll();
	}

	private void replace(Path file, List<String> told) {
		new PictureReplacement(PlatformUI.getWorkbench().getDisplay(), picture(), file,
				(pages, chosen) -> new PageDialog(bench.getSite().getShell(), file, pages, chosen).open(), edits()::execute, told::add).schedule();
	}

	@Test
	void theWantedPageOfAFileIsAskedFor() throws Exception {
		Path menu = folder.resolve("menu.pdf");
		Files.writeString(menu, """
				%PDF-1.7
				1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
				2 0 obj <</Type/Pages/Count 3/Kids[3 0 R 4 0 R 5 0 R]>> endobj
				3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 100 100]>> endobj
				4 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 200 100]>> endobj
				5 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 300 100]>> endobj
				trailer <</Root 1 0 R/Size 6>>
				startxref
				0
				%%EOF
				""");
		List<String> told = new ArrayList<>();
		replace(menu, told);
		Screen.waitUntil("the page is asked for", () -> Dialogs.isOpen("Replace Picture"));
		Shell dialog = Dialogs.shell("Replace Picture");
		bringToFront(dialog);
		assertTrue(Dialogs.all(dialog).map(Dialogs::text).anyMatch(each -> each.contains("menu.pdf") && each.contains("3")));
		Screen.keep(Screen.picture(dialog), "replace-picture-page");
		Screen.type("4");
		Screen.settle();
		assertFalse(Dialogs.button(dialog, "OK").isEnabled());
		Screen.key("BackSpace");
		Screen.type("2");
		Screen.settle();
		Screen.key("Return");
		Screen.waitUntil("it is that page", () -> "application/pdf;page=2".equals(picture().getMediaType()));
		assertEquals(80, picture().getWidth());
		assertEquals(40, picture().getHeight(), 1e-3);
		assertEquals(List.of(), told);
		undoAll();
	}
}

package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Files of others come onto the bench. */
class ImportUiTest extends OpenBench {

	private static final String TITLE = "Import";
	private static final String TAG = """
			<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
				width="100mm" height="60mm" viewBox="0 0 100 60">
			<g id="Tag"><rect id="card" x="5" y="5" width="60" height="40"/></g>
			<g id="Fold"><path id="fold" d="M75 5v30" fill="none" stroke="#000"/></g>
			%s</svg>
			""";
	/** A line of ten units, and nothing said of the unit. */
	private static final String PLATE = "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nPlate\n10\n0\n20\n0\n11\n10\n21\n5\n0\nENDSEC\n0\nEOF\n";

	@BeforeEach
	@AfterEach
	void forget() throws Exception {
		InstanceScope.INSTANCE.getNode("org.frisket.ui.bench").node("import").removeNode();
	}

	private Path write(String name, String text) throws IOException {
		return Files.writeString(folder.resolve(name), text);
	}

	private Job job() {
		return bench.document().job();
	}

	private static List<String> layers(Job job) {
		return job.getLayers().stream().map(Layer::getName).toList();
	}

	private static Element named(Job job, String name) {
		return Jobs.elements(job).stream().filter(element -> name.equals(element.getName())).findFirst().orElseThrow();
	}

	private Shell ask(Path file) {
		// the window system's own chooser of files stands between the key and this
		Adapters.adapt(bench, JobOnBench.class).importFiles(List.of(file), Optional.empty());
		return form();
	}

	private static Shell form() {
		Screen.waitUntil("the form is there", () -> Dialogs.isOpen(TITLE));
		Shell form = Dialogs.shell(TITLE);
		bringToFront(form);
		return form;
	}

	private static Button ready(Shell form) {
		Button button = Dialogs.button(form, "Import");
		Screen.waitUntil("the file is read", button::isEnabled);
		return button;
	}

	private static <C extends Control> C field(Shell shell, Class<C> type, String name) {
		return Dialogs.all(shell).filter(type::isInstance).map(type::cast).filter(c -> name.equals(c.getData()))
				.findFirst().orElseThrow();
	}

	private static List<String> remarks(Shell form) {
		return Dialogs.all(form).filter(org.eclipse.swt.widgets.List.class::isInstance)
				.map(org.eclipse.swt.widgets.List.class::cast).findFirst().map(list -> List.of(list.getItems())).orElseThrow();
	}

	@Test
	void aFileIsLaidIntoTheJobAsOneStep() throws Exception {
		String before = text(job());
		List<String> own = layers(job());
		Shell form = ask(write("tag.svg", TAG.formatted("")));
		ready(form);
		assertTrue(remarks(form).get(0).startsWith("tag.svg: "), remarks(form).toString());
		Combo lines = field(form, Combo.class, "lines");
		lines.select(lines.indexOf("crease"));
		Screen.settle();
		ready(form);
		Screen.keep(Screen.picture(form), "import");
		assertTrue(field(form, Combo.class, "strokes").getSize().x > 100, "the choice has no room");
		Screen.key("Return");
		Screen.waitUntil("the layers are there", () -> job().getLayers().size() == own.size() + 2);
		assertFalse(Dialogs.isOpen(TITLE));
		assertEquals(List.of("Tag", "Fold"), layers(job()).subList(own.size(), own.size() + 2));
		assertEquals(OperationKind.CREASE, named(job(), "fold").getOperations().get(0).getKind());
		assertEquals(List.of(named(job(), "card").getId(), named(job(), "fold").getId()), selectedIds());
		Screen.waitUntil("the window says it", () -> StatusText.shown().contains("Imported tag.svg; layers: 2"));
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		listen(bench);
		Screen.key("ctrl+z");
		Screen.waitUntil("it is taken back", () -> layers(job()).equals(own));
		assertEquals(before, text(job()));
	}

	@Test
	void aUnitThatIsNotToldIsAskedForWithTheSizeOfEachAnswer() throws Exception {
		Path file = write("plate.dxf", PLATE);
		Bench.open(page(), file);
		Shell form = form();
		Screen.waitUntil("it is asked", () -> Dialogs.all(form).map(Dialogs::text).anyMatch(t -> t.startsWith("in: ")));
		assertFalse(Dialogs.button(form, "Import").isEnabled());
		assertTrue(Dialogs.all(form).map(Dialogs::text).anyMatch("in: 254.00 mm × 127.00 mm"::equals),
				Dialogs.all(form).map(Dialogs::text).toList().toString());
		Screen.keep(Screen.picture(form), "import-unit");
		Button inch = Dialogs.button(form, "in: 254.00 mm × 127.00 mm");
		Screen.click(inch, 10, inch.getSize().y / 2);
		Button ok = ready(form);
		Screen.click(ok, ok.getSize().x / 2, ok.getSize().y / 2);
		Screen.waitUntil("a new job is in front", () -> page().getActiveEditor() != bench);
		BenchEditor made = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("the art is there", () -> !Jobs.elements(made.document().job()).isEmpty());
		assertEquals("plate", made.document().job().getTitle());
		assertEquals(List.of("Plate"), layers(made.document().job()));
		Screen.waitUntil("it is worked through", made::isUpToDate);
		assertEquals(254, made.document().picture().bounds().width(), 1e-6);
	}

	@Test
	void brokenFilesAreToldWithPlaceAndReason() throws Exception {
		Path broken = write("broken.svg", "<svg xmlns='http://www.w3.org/2000/svg'>\n<rect width='5'");
		List<String> read = Dialogs.answer("OK", () -> {
			try {
				Bench.open(page(), broken);
			} catch (Exception e) {
				throw new AssertionError(e);
			}
		});
		assertTrue(read.stream().anyMatch(text -> text.contains("broken.svg") && text.contains("line ")), read.toString());
		assertEquals(bench, page().getActiveEditor());
		Shell form = ask(broken);
		Screen.waitUntil("it says so", () -> remarks(form).stream().anyMatch(text -> text.contains("broken.svg, line ")));
		assertFalse(Dialogs.button(form, "Import").isEnabled());
		Screen.key("Escape");
		assertFalse(Dialogs.isOpen(TITLE));
	}

	@Test
	void severalFilesThatAreDroppedLieAboutThePlaceAsOneStep() throws Exception {
		List<String> own = layers(job());
		Path one = write("tag.svg", TAG.formatted(""));
		Path other = write("label.svg", TAG.formatted(""));
		Control canvas = bench.viewer().getControl();
		int x = canvas.getSize().x / 2;
		int y = canvas.getSize().y / 2;
		Point place = bench.zoom().toMm(x, y);
		DraggedFiles.drop(List.of(one, other, write("notes.txt", "not art")), canvas, x, y);
		Shell form = form();
		ready(form);
		Screen.key("Return");
		Screen.waitUntil("the layers are there", () -> job().getLayers().size() == own.size() + 4);
		Screen.waitUntil("they are worked through", bench::isUpToDate);
		Bounds all = Adapters.adapt(bench, JobOnBench.class).bounds(job().getLayers().subList(own.size(), own.size() + 4)
				.stream().flatMap(layer -> layer.getElements().stream()).toList());
		assertEquals(place.x(), all.centre().x(), 0.01);
		assertEquals(place.y(), all.centre().y(), 0.01);
		listen(bench);
		Screen.key("ctrl+z");
		Screen.waitUntil("they are taken back", () -> layers(job()).equals(own));
	}

	@Test
	void filesThatAreDroppedOnTheStackStayWhereTheyAre() throws Exception {
		Path file = write("tag.svg", TAG.formatted(""));
		StackView view = (StackView) page().showView(Views.STACK_ID);
		Screen.settle();
		StackCanvas stack = view.canvas();
		DraggedFiles.drop(List.of(file), stack, stack.getSize().x / 2, stack.getSize().y / 2);
		Shell form = form();
		ready(form);
		Screen.key("Return");
		Screen.waitUntil("it is there", () -> layers(job()).contains("Tag"));
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		Bounds card = Adapters.adapt(bench, JobOnBench.class).bounds(List.of(named(job(), "card")));
		assertEquals(5, card.minX(), 0.01);
		assertEquals(5, card.minY(), 0.01);
	}

	/** Of a picture nobody wants to know what is done with lines; and it is seen. */
	@Test
	void onlyWhatMattersIsAsked() throws Exception {
		BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
		for (int i = 0; i < 60 * 40; i++) {
			image.setRGB(i % 60, i / 60, 0xcc3311);
		}
		Path photo = folder.resolve("quay.png");
		ImageIO.write(image, "png", photo.toFile());
		Shell picture = ask(photo);
		Screen.waitUntil("the file is read", () -> rules(picture).equals(List.of("pictures")));
		Canvas preview = field(picture, Canvas.class, "preview");
		Screen.settle();
		assertColour(new RGB(0xcc, 0x33, 0x11),
				Screen.pixel(Screen.picture(preview), preview.getSize().x / 2, preview.getSize().y / 2));
		Screen.keep(Screen.picture(picture), "import-photo");
		Screen.key("Escape");
		Shell shapes = ask(write("tag.svg", TAG.formatted("")));
		ready(shapes);
		assertEquals(List.of("lines", "areas", "repair"), rules(shapes));
		Screen.key("Escape");
	}

	/** Those of the fields that say what becomes of art in a job. */
	private static List<Object> rules(Shell form) {
		List<String> rules = List.of("lines", "areas", "pictures", "repair");
		return Dialogs.all(form).filter(Combo.class::isInstance).map(Control::getData).filter(rules::contains).toList();
	}

	@Test
	void picturesAreSeenWithTheirPixels() throws Exception {
		BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_RGB);
		image.setRGB(0, 0, 0xcc3311);
		image.setRGB(1, 0, 0x1133cc);
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(image, "png", png);
		// a quarter turn: the first pixel above the second
		Bench.open(page(), write("photo.svg", TAG.formatted("<image id='quay' width='40' height='20' "
				+ "transform='matrix(0 1 -1 0 40 10)' xlink:href='data:image/png;base64,"
				+ Base64.getEncoder().encodeToString(png.toByteArray()) + "'/>")));
		Screen.waitUntil("a new job is in front", () -> page().getActiveEditor() != bench);
		bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("the picture is there", () -> !Jobs.elements(job()).isEmpty() && bench.isUpToDate());
		Screen.settle();
		assertColour(new RGB(0xcc, 0x33, 0x11), seenAt(30, 15));
		assertColour(new RGB(0x11, 0x33, 0xcc), seenAt(30, 40));
		Screen.keepScreen("import-picture");
		String file = text(job()).replaceFirst("image=\"[^\"]+\"", "image=\"AAAA\"");
		bench = open(Files.writeString(folder.resolve("damaged.frjob"), file));
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		assertTrue(bench.document().picture().findings().stream().anyMatch(f -> f.id().equals("picture-unreadable")));
		assertTrue(bench.document().picture().element(named(job(), "quay").getId()).placeholder());
	}
}

package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.dialogs.DialogPage;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.frisket.editing.EditExecutor;
import org.frisket.editing.elements.AddElement;
import org.frisket.model.Alignment;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.prepare.Composition;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.studio.Studio;
import org.frisket.typography.FontFace;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The studio's folder is chosen in the preferences, and keeps the fonts of what is saved. */
class StudioUiTest extends OpenBench {

	private static final String PAGE = "org.frisket.ui.bench.preferences.studio";

	private Path home;

	@BeforeEach
	void makeHome() throws IOException {
		home = Files.createTempDirectory("home");
	}

	@AfterEach
	void backToTheUsualStudio() throws IOException {
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).remove(StudioChoice.KEY);
		StudioChoice.apply();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(each);
			}
		}
	}

	private static void click(Control control) {
		Screen.click(control, control.getSize().x / 2, control.getSize().y / 2);
	}

	/** Types the place into the page and confirms with the button. The dialog is open still. */
	private static PreferenceDialog choose(PreferenceDialog dialog, Path place) {
		Text field = Dialogs.all(dialog.getShell()).filter(control -> control instanceof Text text && text.isEnabled()
				&& text.getParent() == pageOf(dialog)).map(Text.class::cast).findFirst().orElseThrow();
		click(field);
		Screen.waitUntil("the field listens", field::isFocusControl);
		Screen.key("ctrl+a");
		Screen.type(place.toString());
		Screen.waitUntil("the place is typed", () -> field.getText().equals(place.toString()));
		Button button = Dialogs.button(dialog.getShell(), "Apply and Close");
		click(button);
		Screen.settle();
		return dialog;
	}

	private static Control pageOf(PreferenceDialog dialog) {
		Control page = ((PreferencePage) dialog.getSelectedPage()).getControl();
		return Dialogs.all(page).filter(Button.class::isInstance)
				.filter(button -> Dialogs.text(button).startsWith("Browse")).findFirst().orElseThrow().getParent();
	}

	private static PreferenceDialog open() {
		PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(
				PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), PAGE, new String[] { PAGE }, null);
		dialog.setBlockOnOpen(false);
		dialog.open();
		bringToFront(dialog.getShell());
		return dialog;
	}

	@Test
	void folderIsChosenAndMadeAndWhatIsNoneIsRefused() throws Exception {
		Path letter = Files.writeString(home.resolve("letter"), "Dear customer");
		PreferenceDialog dialog = choose(open(), letter);
		assertFalse(dialog.getShell().isDisposed(), "it stays open");
		assertTrue(dialog.getSelectedPage() instanceof DialogPage page
				&& page.getErrorMessage().contains("it is no folder"));
		Screen.keep(Screen.picture(dialog.getShell()), "preferences-studio-refused");
		Path place = home.resolve("studio");
		choose(dialog, place);
		Screen.waitUntil("the dialog is closed", () -> dialog.getShell() == null || dialog.getShell().isDisposed());
		assertEquals(place, Studio.folder().path());
		assertTrue(Files.isDirectory(place.resolve("fonts")));
	}

	/** With a job that is changed, by its own path. */
	private BenchEditor changed(FontFace face, Path order) throws Exception {
		Job job = new Composition("Ferry", face, 20, Alignment.LEFT, OptionalDouble.empty(), List.of(),
				OperationKind.CUT).toJob();
		JobFile.save(job, order);
		BenchEditor editor = open(order);
		Screen.waitUntil("it is worked through", editor::isUpToDate);
		change(editor);
		return editor;
	}

	private static void change(BenchEditor editor) {
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData("M 10 10 L 10 30 L 30 30 L 30 10 Z");
		Adapters.adapt(editor, EditExecutor.class)
				.execute(new AddElement(editor.document().job().getLayers().get(0), outline));
		listen(editor);
	}

	private static void save(BenchEditor editor) {
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved", () -> !editor.isDirty());
	}

	private static void chooseStudio(Path place) {
		InstanceScope.INSTANCE.getNode(StudioChoice.NODE).put(StudioChoice.KEY, place.toString());
		StudioChoice.apply();
	}

	@Test
	void savingKeepsTheFontsOfTheJob() throws Exception {
		chooseStudio(home.resolve("studio"));
		FontFace face = FontLibraries.installed().find("Liberation Serif");
		BenchEditor editor = changed(face, folder.resolve("order.frjob"));
		assertFalse(Files.exists(home.resolve("studio")), "looking at a job keeps nothing");
		save(editor);
		Screen.waitUntil("its font is kept", () -> Studio.folder().keptFonts().has(face.digest()));
	}

	@Test
	void fontThatCannotBeKeptIsSpokenOfOnce() throws Exception {
		Path studio = home.resolve("studio");
		chooseStudio(studio);
		FontFace face = FontLibraries.installed().find("Liberation Mono");
		BenchEditor editor = changed(face, folder.resolve("order.frjob"));
		// a folder is in the way of the file, as whoever runs the tests may be allowed to write anywhere
		Path kept = Studio.folder().keptFonts().folder();
		Files.createDirectories(kept.resolve(face.digest() + ".font"));
		save(editor);
		Screen.waitUntil("it is said in the status line", () -> StatusText.shown().contains("Liberation Mono"));
		assertTrue(StatusText.shown().contains(kept.toString()), StatusText.shown());
		assertTrue(StatusText.shown().contains("this is a folder"), StatusText.shown());
		Screen.keepScreen("font-not-kept");
		editor.say(null);
		change(editor);
		save(editor);
		Screen.rest(500);
		assertFalse(StatusText.shown().contains("Liberation Mono"), StatusText.shown());
	}
}

package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.Wording;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.BeforeEach;

/** The properties of the wordings on a bench, met by their names on the screen. */
abstract class OpenProperties extends OpenBench {

	protected final WordingJob made = new WordingJob();
	protected PropertiesView view;
	protected JobOnBench onBench;
	protected String before;

	@Override
	protected Path jobFile() throws IOException {
		return made.save(folder.resolve("wording.frjob"));
	}

	@BeforeEach
	protected void openProperties() throws Exception {
		view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		onBench = Adapters.adapt(bench, JobOnBench.class);
		before = text(bench.document().job());
		page().activate(view);
		Screen.settle();
	}

	protected void select(Element... originals) {
		onBench.select(Stream.of(originals).map(this::element).toList());
		Screen.settle();
	}

	protected Wording first() {
		return (Wording) element(made.first);
	}

	protected Wording second() {
		return (Wording) element(made.second);
	}

	protected Text entry(String name) {
		return (Text) view.field(name);
	}

	protected void type(String name, String text) {
		entry(name).setFocus();
		Screen.settle();
		Screen.key("ctrl+a");
		Screen.type(text);
	}

	protected void enter(String name, String text) {
		type(name, text);
		Screen.key("Return");
	}

	protected void choose(String name, String item) {
		Combo combo = (Combo) view.field(name);
		int index = Arrays.asList(combo.getItems()).indexOf(item);
		assertTrue(index >= 0, item + " in " + List.of(combo.getItems()));
		combo.select(index);
		combo.notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	protected void tick(String name) {
		Button button = (Button) view.field(name);
		button.setFocus();
		Screen.settle();
		Screen.key("space");
	}

	/** One undo leads back to the first state, to the byte. */
	protected void assertOneStep() throws IOException {
		bench.commandStack().undo();
		Screen.settle();
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
	}

	protected Bounds bounds(Element original) {
		return onBench.bounds(List.of(element(original)));
	}

	protected static Stream<String> labels(Composite parent) {
		return Stream.of(parent.getChildren()).filter(Control::getVisible)
				.flatMap(child -> child instanceof Composite composite ? labels(composite)
						: child instanceof Label label ? Stream.of(label.getText()) : Stream.empty());
	}

	protected void press(String name) {
		Button button = (Button) view.field(name);
		button.setFocus();
		Screen.settle();
		Screen.key("space");
	}
}

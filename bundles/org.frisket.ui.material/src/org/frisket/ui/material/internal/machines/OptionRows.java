package org.frisket.ui.material.internal.machines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.frisket.geometry.options.Option;
import org.frisket.material.tools.Problem;

/** Options as rows of a form: what is asked, the answer, and below it what is wrong with it. */
final class OptionRows extends Composite {

	/** What is done with answers. */
	interface Client {

		/** Something is typed or chosen. */
		default void typed() {
		}

		/** An answer is meant: the field was left, Enter was pressed, or something was chosen. */
		default void taken() {
		}
	}

	private static final int SPACE_PX = 8;
	private final Client client;
	private final List<OptionRow> rows = new ArrayList<>();
	private List<Option> options = List.of();

	OptionRows(Composite parent, Client client) {
		super(parent, SWT.NONE);
		this.client = client;
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(SPACE_PX, SPACE_PX / 2).applyTo(this);
	}

	/** Shows these options with these texts; the defaults where there are none. */
	void show(List<Option> shown, Map<String, String> texts) {
		if (!shown.equals(options)) {
			for (Control child : getChildren()) {
				child.dispose();
			}
			rows.clear();
			options = shown;
			shown.forEach(option -> rows.add(new OptionRow(this, option, client)));
			requestLayout();
		}
		rows.forEach(row -> row.show(texts.getOrDefault(row.option().name(), row.option().initial())));
	}

	/** Shows each problem at its option, the first one where an option has several. Whether there is none. */
	boolean say(List<Problem> problems) {
		for (OptionRow row : rows) {
			row.say(problems.stream().filter(problem -> problem.option().equals(row.option().name())).findFirst()
					.map(Problem::message).orElse("")); //$NON-NLS-1$
		}
		requestLayout();
		return problems.isEmpty();
	}

	/** What is answered, by the names of the options. */
	Map<String, String> texts() {
		Map<String, String> texts = new LinkedHashMap<>();
		rows.forEach(row -> texts.put(row.option().name(), row.text()));
		return texts;
	}

	/** Whether somebody is typing what was not taken yet. */
	boolean isTyping() {
		return rows.stream().anyMatch(OptionRow::isTyping);
	}

	void setReadOnly(boolean fixed) {
		rows.forEach(row -> row.setReadOnly(fixed));
	}
}

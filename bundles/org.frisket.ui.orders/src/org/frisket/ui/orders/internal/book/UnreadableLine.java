package org.frisket.ui.orders.internal.book;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/**
 * Names the jobs that are missing in the table because they cannot be read, and says what to do. Each number leads to
 * the reason. It takes no room while there are none.
 */
final class UnreadableLine {

	private static final int MOST = 12;
	private static final int LEAST_PX = 120;

	private final Link link;
	private final Consumer<String> told;
	private List<Long> numbers = List.of();

	/**
	 * @param area has a grid of one column
	 * @param told told why a job cannot be read
	 */
	UnreadableLine(Composite area, int indent, Consumer<String> told) {
		this.told = told;
		link = new Link(area, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(indent, 0).hint(LEAST_PX, SWT.DEFAULT).exclude(true)
				.applyTo(link);
		link.setVisible(false);
		link.addListener(SWT.Selection, event -> ask(Long.parseLong(event.text)));
	}

	/** @param now the numbers of the jobs that cannot be read */
	void show(List<Long> now) {
		if (now.equals(numbers)) {
			return;
		}
		numbers = List.copyOf(now);
		link.setText(words(numbers));
		link.setVisible(!numbers.isEmpty());
		((GridData) link.getLayoutData()).exclude = numbers.isEmpty();
		link.getParent().layout(true, true);
	}

	private static String words(List<Long> numbers) {
		if (numbers.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		String named = numbers.stream().limit(MOST).map(number -> "<a>" + number + "</a>") //$NON-NLS-1$ //$NON-NLS-2$
				.collect(Collectors.joining(", ")); //$NON-NLS-1$
		if (numbers.size() == 1) {
			return NLS.bind(Messages.UnreadableLine_one, named);
		}
		return NLS.bind(Messages.UnreadableLine_many, numbers.size() <= MOST ? named
				: NLS.bind(Messages.UnreadableLine_more, named, numbers.size() - MOST));
	}

	private void ask(long number) {
		new StoreJob<>(NLS.bind(Messages.UnreadableLine_asking, number), () -> OrderDesk.book().find(number),
				readable -> {
			// it was mended meanwhile
			OrderDesk.get().refresh();
		}, told).schedule();
	}

	Link link() {
		return link;
	}
}

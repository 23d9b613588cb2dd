package org.frisket.orders.internal;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Wording;
import org.frisket.studio.NameKey;

/** What of a job is listed and searched. */
public final class Words {

	private static final int LONGEST = 4000;
	private static final int LONGEST_STOCK = 2000;

	private Words() {
	}

	/** All that somebody may look a job up by: title, customer, notes, and what it says. */
	public static String of(Job job, String customer) {
		Set<String> words = new LinkedHashSet<>();
		add(job.getTitle(), words);
		add(customer, words);
		add(job.getNotes(), words);
		Jobs.elements(job).forEach(element -> {
			add(element.getName(), words);
			if (element instanceof Wording wording) {
				add(wording.getText(), words);
			}
		});
		job.getLayers().forEach(layer -> add(layer.getStock(), words));
		return cut(String.join(" ", words), LONGEST);
	}

	private static void add(String text, Set<String> words) {
		if (text != null && !text.isBlank()) {
			words.add(NameKey.of(text));
		}
	}

	/** The ids of the stocks of the layers, each once. */
	public static String stock(Job job) {
		return cut(job.getLayers().stream().map(Layer::getStock).filter(stock -> stock != null && !stock.isBlank())
				.distinct().collect(Collectors.joining(" ")), LONGEST_STOCK);
	}

	private static String cut(String text, int longest) {
		return text.length() <= longest ? text : text.substring(0, text.offsetByCodePoints(0, longest / 2));
	}
}

package org.frisket.editing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.internal.Groupings;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/**
 * Elements on their way from one job to another, as the text of a job file that holds only them and their layers. It
 * can be pasted into a text editor, read, and brought back.
 */
public final class JobFragment {

	private static final String ID = "fragment";

	private JobFragment() {
	}

	/**
	 * The text for these elements, which lie in one job. Mats, combinations and weed lines follow within the fragment; one
	 * none of whose elements comes along is left out, for it would be nothing by itself. Elements are grouped as they were.
	 */
	public static String write(Collection<? extends Element> elements) {
		Job source = Jobs.jobOf(elements.iterator().next());
		EcoreUtil.Copier copier = new EcoreUtil.Copier(true, false);
		Job fragment = Jobs.create(ID, source.getTitle());
		for (Layer layer : source.getLayers()) {
			List<Element> chosen = layer.getElements().stream().filter(elements::contains).toList();
			if (!chosen.isEmpty()) {
				Layer copy = FrisketFactory.INSTANCE.createLayer();
				copy.setId(layer.getId());
				copy.setName(layer.getName());
				copy.setStock(layer.getStock());
				copy.setColour(layer.getColour());
				copy.getElements().addAll(copier.copyAll(chosen));
				fragment.getLayers().add(copy);
			}
		}
		copier.copyReferences();
		dropIdle(fragment);
		group(source, copier, fragment);
		try {
			return new String(JobFile.toBytes(fragment), StandardCharsets.UTF_8);
		} catch (IOException e) {
			throw new IllegalStateException(e);
		}
	}

	private static void dropIdle(Job fragment) {
		List<Element> idle = new ArrayList<>();
		do {
			idle.clear();
			for (Element follower : Targets.followers(fragment)) {
				if (Jobs.sources(follower).isEmpty()) {
					idle.add(follower);
				}
			}
			for (Element follower : Targets.followers(fragment)) {
				Jobs.sources(follower).removeAll(idle);
			}
			idle.forEach(follower -> Jobs.layerOf(follower).getElements().remove(follower));
		} while (!idle.isEmpty());
		fragment.getLayers().removeIf(layer -> layer.getElements().isEmpty());
	}

	private static void group(Job source, EcoreUtil.Copier copier, Job fragment) {
		Map<Element, Element> copies = new LinkedHashMap<>();
		for (Element element : Jobs.elements(source)) {
			if (copier.get(element) instanceof Element copy && Jobs.layerOf(copy) != null) {
				copies.put(element, copy);
			}
		}
		Groupings.copy(source.getGroups(), copies, fragment);
	}

	/** The elements in a text, or nothing if it is not one that {@link #write} made. */
	public static Optional<Job> read(String text) {
		if (text == null || !text.contains("urn:frisket:job:")) {
			return Optional.empty();
		}
		try {
			return Optional.of(JobFile.load(text.getBytes(StandardCharsets.UTF_8), ID));
		} catch (IOException e) {
			return Optional.empty();
		}
	}
}

package org.frisket.prepare.letterforms;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.typography.FontFace;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.NamedInstance;

/**
 * What can be chosen of the letters of a font.
 *
 * @param features  tags of its features that are chosen by eye, in alphabetical order
 * @param names     what the font itself calls some of them, by their tags
 * @param axes      by which it can be varied, without those that its maker would not have shown
 * @param instances styles that its maker has set up
 * @param settings  values of the axes before a wording says anything of them
 */
public record Letterforms(List<String> features, Map<String, String> names, List<Axis> axes,
		List<NamedInstance> instances, AxisSettings settings) {

	/** Of no font. */
	public static final Letterforms NONE = new Letterforms(List.of(), Map.of(), List.of(), List.of(), AxisSettings.NONE);

	/** By how much values of an axis may differ and still be the same. */
	private static final double SAME = 1e-6;

	public Letterforms {
		features = List.copyOf(features);
		names = Map.copyOf(names);
		axes = List.copyOf(axes);
		instances = List.copyOf(instances);
	}

	public static Letterforms of(FontFace face) {
		List<Axis> shown = face.canVary() ? face.axes().stream().filter(axis -> !axis.hidden()).toList() : List.of();
		return new Letterforms(FeatureNames.chosenByEye(face.features()), face.featureNames(), shown,
				shown.isEmpty() ? List.of() : face.instances(), face.settings());
	}

	/** What can be chosen of all these fonts alike; values of axes are those of the first. */
	public static Letterforms common(List<Letterforms> fonts) {
		if (fonts.isEmpty()) {
			return NONE;
		}
		List<String> features = new ArrayList<>(fonts.get(0).features);
		Map<String, String> names = new TreeMap<>(fonts.get(0).names);
		List<Axis> axes = new ArrayList<>(fonts.get(0).axes);
		List<NamedInstance> instances = new ArrayList<>(fonts.get(0).instances);
		for (Letterforms font : fonts) {
			features.retainAll(font.features);
			names.entrySet().retainAll(font.names.entrySet());
			axes.retainAll(font.axes);
			instances.retainAll(font.instances);
		}
		return new Letterforms(features, names, axes, instances, fonts.get(0).settings);
	}

	/** What a feature is called: as the font has it, else as the program knows it. */
	public String name(String tag, FeatureNames known) {
		return names.getOrDefault(tag, known.of(tag));
	}

	/** The value of an axis where a wording says these. */
	public double value(Axis axis, AxisSettings said) {
		Double own = said.values().get(axis.tag());
		Double font = settings.values().get(axis.tag());
		return axis.clamped(own != null ? own : font != null ? font : axis.normal());
	}

	/** The named style that these values come to. */
	public Optional<NamedInstance> instance(AxisSettings said) {
		return instances.stream().filter(instance -> axes.stream().allMatch(
				axis -> Math.abs(value(axis, said) - value(axis, instance.settings())) < SAME)).findFirst();
	}

	/** What a wording says of the axes when one of them gets a value; nothing of an axis that is as the font has it. */
	public AxisSettings with(AxisSettings said, Axis axis, double value) {
		SortedMap<String, Double> values = new TreeMap<>(said.values());
		values.remove(axis.tag());
		if (Math.abs(value(axis, AxisSettings.NONE) - axis.clamped(value)) >= SAME) {
			values.put(axis.tag(), axis.clamped(value));
		}
		return new AxisSettings(values);
	}

	/** What a wording says of the axes to be set in a named style; nothing of those that are as the font has them. */
	public AxisSettings with(AxisSettings said, NamedInstance instance) {
		AxisSettings all = said;
		for (Axis axis : axes) {
			all = with(all, axis, value(axis, instance.settings()));
		}
		return all;
	}
}

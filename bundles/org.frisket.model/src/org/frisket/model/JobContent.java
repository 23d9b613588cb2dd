package org.frisket.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.FeatureMap;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xml.type.AnyType;

/** All that a job holds, taken as one. */
public final class JobContent {

	private JobContent() {
	}

	/**
	 * Has two jobs change places: each holds afterwards what the other one held, what this version does not know of
	 * their files included. The objects within them stay the same ones. To do it twice is to do nothing.
	 */
	public static void swap(Job one, Job other) {
		// before anything moves: what a resource no longer holds it may forget
		Map<EObject, AnyType> unknownOfOne = unknown(one);
		Map<EObject, AnyType> unknownOfOther = unknown(other);
		for (EStructuralFeature feature : one.eClass().getEAllStructuralFeatures()) {
			if (feature.isMany()) {
				swapLists(one, other, feature);
			} else {
				swapValues(one, other, feature);
			}
		}
		give(unknownOfOther, other, one);
		give(unknownOfOne, one, other);
	}

	@SuppressWarnings("unchecked")
	private static void swapLists(Job one, Job other, EStructuralFeature feature) {
		List<Object> ofOne = (List<Object>) one.eGet(feature);
		List<Object> ofOther = (List<Object>) other.eGet(feature);
		List<Object> wasOfOne = new ArrayList<>(ofOne);
		List<Object> wasOfOther = new ArrayList<>(ofOther);
		ofOne.clear();
		ofOther.clear();
		ofOne.addAll(wasOfOther);
		ofOther.addAll(wasOfOne);
	}

	private static void swapValues(Job one, Job other, EStructuralFeature feature) {
		Object ofOne = one.eGet(feature);
		one.eSet(feature, other.eGet(feature));
		other.eSet(feature, ofOne);
	}

	/**
	 * What the file of a job said of one of its parts beyond what this version knows, as a text that is the same for the
	 * same; empty if nothing. What it said of parts within that one is not in it.
	 */
	public static String unknown(EObject part) {
		AnyType said = part.eResource() instanceof XMLResource resource ? resource.getEObjectToExtensionMap().get(part) : null;
		StringBuilder text = new StringBuilder();
		if (said != null) {
			write(said, text);
		}
		return text.toString();
	}

	private static void write(AnyType said, StringBuilder text) {
		for (FeatureMap map : List.of(said.getAnyAttribute(), said.getMixed())) {
			for (FeatureMap.Entry entry : map) {
				text.append(entry.getEStructuralFeature().getName()).append('(');
				if (entry.getValue() instanceof AnyType inner) {
					write(inner, text);
				} else {
					text.append(entry.getValue());
				}
				text.append(')');
			}
		}
	}

	/** Has a part of a job say what another one says beyond what this version knows, and nothing else of the kind. */
	public static void copyUnknown(EObject from, EObject to) {
		if (to.eResource() instanceof XMLResource resource) {
			AnyType said = from.eResource() instanceof XMLResource other ? other.getEObjectToExtensionMap().get(from) : null;
			if (said == null) {
				resource.getEObjectToExtensionMap().remove(to);
			} else {
				resource.getEObjectToExtensionMap().put(to, EcoreUtil.copy(said));
			}
		}
	}

	/** What the file of a job said of it and its parts beyond what this version knows. */
	private static Map<EObject, AnyType> unknown(Job job) {
		Map<EObject, AnyType> unknown = new HashMap<>();
		if (job.eResource() instanceof XMLResource resource) {
			unknown.put(job, resource.getEObjectToExtensionMap().get(job));
			for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
				EObject part = all.next();
				unknown.put(part, resource.getEObjectToExtensionMap().get(part));
			}
		}
		return unknown;
	}

	private static void give(Map<EObject, AnyType> unknown, Job from, Job to) {
		if (!(to.eResource() instanceof XMLResource resource)) {
			return;
		}
		resource.getEObjectToExtensionMap().remove(to);
		unknown.forEach((part, said) -> {
			if (said != null) {
				resource.getEObjectToExtensionMap().put(part == from ? to : part, said);
			}
		});
	}
}

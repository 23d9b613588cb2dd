package org.frisket.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * Layers of a PDF that becomes part of another one, as they are when it is opened (ISO 32000-1, 8.11): what is shown is in
 * the group of the other file that all of it is in, what is hidden is seen only when that group is not.
 */
final class FixedLayers {

	private static final COSName POLICY = COSName.getPDFName("P");
	private static final COSName ALL_OFF = COSName.getPDFName("AllOff");
	private static final int DEEPEST = 20;

	/** Null for a file without layers. */
	private final PDOptionalContentProperties layers;
	private final COSDictionary shown;
	private final COSDictionary hidden = new COSDictionary();
	private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());

	private FixedLayers(PDOptionalContentProperties layers, COSDictionary shown) {
		this.layers = layers;
		this.shown = shown;
		hidden.setItem(COSName.TYPE, COSName.OCMD);
		// as a list: not every reader looks at the policy of a single one
		hidden.setItem(COSName.OCGS, new COSArray(List.of(shown)));
		hidden.setItem(POLICY, ALL_OFF);
	}

	/** @param layers of the file that it comes from, null for none */
	static FixedLayers of(PDOptionalContentProperties layers, PDOptionalContentGroup group) {
		return new FixedLayers(layers, group.getCOSObject());
	}

	void fix(PDFormXObject form) throws IOException {
		object(form.getCOSObject(), 0);
	}

	private void object(COSDictionary object, int depth) {
		if (object == null || depth > DEEPEST || !seen.add(object)) {
			return;
		}
		COSDictionary layer = object.getCOSDictionary(COSName.OC);
		if (layer != null) {
			object.setItem(COSName.OC, isShown(layer) ? shown : hidden);
		}
		COSDictionary resources = object.getCOSDictionary(COSName.RESOURCES);
		if (resources == null) {
			return;
		}
		COSDictionary properties = resources.getCOSDictionary(COSName.PROPERTIES);
		if (properties != null && seen.add(properties)) {
			for (COSName name : new ArrayList<>(properties.keySet())) {
				COSDictionary each = properties.getCOSDictionary(name);
				if (each != null && isLayer(each)) {
					properties.setItem(name, isShown(each) ? shown : hidden);
				}
			}
		}
		for (COSName kind : new COSName[] { COSName.XOBJECT, COSName.PATTERN, COSName.FONT }) {
			COSDictionary all = resources.getCOSDictionary(kind);
			if (all != null) {
				all.keySet().forEach(name -> object(all.getCOSDictionary(name), depth + 1));
			}
		}
	}

	private static boolean isLayer(COSDictionary dictionary) {
		COSName type = dictionary.getCOSName(COSName.TYPE);
		return COSName.OCG.equals(type) || COSName.OCMD.equals(type);
	}

	private boolean isShown(COSDictionary layer) {
		if (layers == null) {
			return true;
		}
		if (!COSName.OCMD.equals(layer.getCOSName(COSName.TYPE))) {
			return layers.isGroupEnabled(new PDOptionalContentGroup(layer));
		}
		List<Boolean> groups = new ArrayList<>();
		COSBase members = layer.getDictionaryObject(COSName.OCGS);
		if (members instanceof COSDictionary one) {
			groups.add(isShown(one));
		} else if (members instanceof COSArray several) {
			for (int i = 0; i < several.size(); i++) {
				if (several.getObject(i) instanceof COSDictionary one && one != layer) {
					groups.add(isShown(one));
				}
			}
		}
		if (groups.isEmpty()) {
			return true;
		}
		String policy = layer.getNameAsString(POLICY, "AnyOn");
		return switch (policy) {
		case "AllOn" -> !groups.contains(false);
		case "AnyOff" -> groups.contains(false);
		case "AllOff" -> !groups.contains(true);
		default -> groups.contains(true);
		};
	}
}

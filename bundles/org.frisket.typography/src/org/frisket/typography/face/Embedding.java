package org.frisket.typography.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * What a font's maker allows when the font is put into documents, from {@code fsType} of table OS/2 (ISO/IEC
 * 14496-22). It does not speak of cut or drawn letters: that is for the licence.
 *
 * @param subsetting whether the font may be put in with only some of its glyphs
 * @param outlines   whether its outlines may be put in, not only pictures of them
 */
public record Embedding(Permission permission, boolean subsetting, boolean outlines) {

	/** From the freest to the strictest. */
	public enum Permission {
		INSTALLABLE, EDITABLE, PREVIEW_AND_PRINT, RESTRICTED
	}

	private static final int RESTRICTED = 2;
	private static final int PREVIEW_AND_PRINT = 4;
	private static final int EDITABLE = 8;
	private static final int NO_SUBSETTING = 0x100;
	private static final int BITMAP_ONLY = 0x200;

	/** Where several permissions are set, as old fonts do, the freest of them holds. */
	public static Embedding of(int fsType) {
		Permission permission = (fsType & EDITABLE) != 0 ? Permission.EDITABLE
				: (fsType & PREVIEW_AND_PRINT) != 0 ? Permission.PREVIEW_AND_PRINT
						: (fsType & RESTRICTED) != 0 ? Permission.RESTRICTED : Permission.INSTALLABLE;
		return new Embedding(permission, (fsType & NO_SUBSETTING) == 0, (fsType & BITMAP_ONLY) == 0);
	}

	/** In plain words, one or a few sentences, with the caution that the licence decides. */
	public String words(Locale locale) {
		ResourceBundle texts = ResourceBundle.getBundle("org.frisket.typography.face.embedding", locale,
				Embedding.class.getClassLoader(),
				ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
		List<String> sentences = new ArrayList<>();
		sentences.add(texts.getString(permission.name()));
		if (!subsetting) {
			sentences.add(texts.getString("NO_SUBSETTING"));
		}
		if (!outlines) {
			sentences.add(texts.getString("PICTURES_ONLY"));
		}
		sentences.add(texts.getString("CAUTION"));
		return String.join(" ", sentences);
	}
}

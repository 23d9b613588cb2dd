package org.frisket.typography.index;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;

import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;

/** A face record as bytes. Scripts follow from the characters and are not written. */
final class FaceRecordFormat {

	private static final int MOST_RANGES = 1 << 20;

	private FaceRecordFormat() {
	}

	static void write(DataOutputStream out, FaceRecord face) throws IOException {
		out.writeUTF(face.names().family());
		out.writeUTF(face.names().style());
		out.writeUTF(face.names().fullName());
		out.writeUTF(face.names().postScriptName());
		out.writeUTF(face.digest());
		out.writeInt(face.style().weight());
		out.writeInt(face.style().width());
		out.writeBoolean(face.style().italic());
		out.writeDouble(face.capHeight());
		out.writeDouble(face.xHeight());
		out.writeInt(face.unitsPerEm());
		out.writeInt(face.glyphs());
		out.writeInt(face.loneGlyphs());
		out.writeInt(face.axes());
		out.writeInt(face.embeddingBits());
		out.writeUTF(face.licence());
		out.writeUTF(face.licenceAddress());
		out.writeBoolean(face.stroke());
		int[] ranges = face.characters().ranges();
		out.writeInt(ranges.length);
		for (int end : ranges) {
			out.writeInt(end);
		}
	}

	static FaceRecord read(DataInputStream in) throws IOException {
		FontNames names = new FontNames(in.readUTF(), in.readUTF(), in.readUTF(), in.readUTF());
		String digest = in.readUTF();
		StyleClass style = new StyleClass(in.readInt(), in.readInt(), in.readBoolean());
		double capHeight = in.readDouble();
		double xHeight = in.readDouble();
		int unitsPerEm = in.readInt();
		int glyphs = in.readInt();
		int loneGlyphs = in.readInt();
		int axes = in.readInt();
		int embeddingBits = in.readInt();
		String licence = in.readUTF();
		String licenceAddress = in.readUTF();
		boolean stroke = in.readBoolean();
		int count = in.readInt();
		if (count < 0 || count > MOST_RANGES) {
			throw new IOException("senseless number of ranges " + count);
		}
		int[] ranges = new int[count];
		for (int i = 0; i < count; i++) {
			ranges[i] = in.readInt();
		}
		CodePoints characters = CodePoints.ofRanges(ranges);
		return new FaceRecord(names, digest, style, capHeight, xHeight, unitsPerEm, glyphs, loneGlyphs, axes,
				embeddingBits, licence, licenceAddress, characters, Scripts.of(characters), stroke);
	}
}

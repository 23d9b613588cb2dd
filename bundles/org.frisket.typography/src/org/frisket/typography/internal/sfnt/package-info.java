/** Reading and checking TrueType and OpenType files (ISO/IEC 14496-22) before anybody else is given them. */
package org.frisket.typography.internal.sfnt;

/**
 * Tests of handing out, and of the formats for machines and drawings through their public interface: {@code machine} is what
 * those share.
 */
package org.frisket.export.tests;

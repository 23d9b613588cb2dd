package org.frisket.material;

/** A stock as it lies on the shelf. @param revision counts its changes; whoever changes it says which one they saw */
public record ShelvedStock(Stock stock, long revision) {
}

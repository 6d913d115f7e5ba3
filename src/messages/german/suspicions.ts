import type { SuspicionParams } from '../rooms/suspicions.js';
import type { CatalogueOf } from '../writer.js';

export const SUSPICIONS: CatalogueOf<SuspicionParams> = {
  'swapped-channels': ({ meanVoltageV, meanCurrentA }, write) =>
    `Die Spannung beträgt im Mittel ${write.figures(meanVoltageV, 4)} V und der Strom ${write.figures(meanCurrentA, 4)} A: Das sieht nach zwei vertauschten Spalten aus. Sie wurden gelesen, wie sie sind; wenn das falsch ist, die Spalten angeben.`,
  'voltage-too-high': ({ peakV, looksLike }, write) =>
    looksLike === 'millivolts'
      ? `Die Spannung erreicht ${write.figures(peakV, 4)} V: Das sieht nach Millivolt aus, die als Volt gelesen sind. Sie wurde gelesen, wie sie ist; wenn das zutrifft, einen Maßstab der Spannung von 0,001 angeben.`
      : `Die Spannung erreicht ${write.figures(peakV, 4)} V, mehr als eine Schweißstromquelle abgibt: ein falscher Maßstab oder eine Spalte mit etwas anderem?`,
  'voltage-too-low': ({ peakV, looksLike }, write) =>
    looksLike === 'kilovolts'
      ? `Die Spannung bleibt unter ${write.figures(peakV, 4)} V: Kilovolt als Volt gelesen, oder ein fehlender Teilerfaktor? Wenn das zutrifft, einen Maßstab der Spannung angeben (1000 für Kilovolt).`
      : `Die Spannung bleibt unter ${write.figures(peakV, 4)} V, wo kein Lichtbogen brennt: Ein Teiler- oder Tastkopffaktor (oft 10) scheint zu fehlen. Wenn das zutrifft, einen Maßstab der Spannung angeben.`,
  'negative-voltage': ({ meanVoltageV }, write) =>
    `Die Spannung beträgt im Mittel ${write.figures(meanVoltageV, 4)} V: Messleitungen vertauscht, oder die Drahtelektrode am Minuspol. Sie wurde gelesen, wie sie ist; zum Umkehren einen negativen Maßstab der Spannung angeben.`,
  'current-too-high': ({ peakA }, write) =>
    `Der Strom erreicht ${write.figures(peakA, 4)} A: Das sieht nach Milliampere aus, die als Ampere gelesen sind. Er wurde gelesen, wie er ist; wenn das zutrifft, einen Maßstab des Stroms von 0,001 angeben.`,
  'current-too-low': ({ peakA }, write) =>
    `Der Strom bleibt unter ${write.figures(peakA, 4)} A, zu wenig für dieses Verfahren: die Spannung eines Messwiderstands oder Hallsensors, oder Kiloampere? Wenn das zutrifft, einen Maßstab des Stroms angeben (Ampere je Einheit).`,
  'negative-current': ({ meanCurrentA }, write) =>
    `Der Strom beträgt im Mittel ${write.figures(meanCurrentA, 4)} A: Die Stromzange sitzt verkehrt herum, oder die Drahtelektrode liegt am Minuspol. Er wurde gelesen, wie er ist; zum Umkehren einen negativen Maßstab des Stroms angeben.`,
};

package org.hammerscale.examples.card;

/** The style sheet of a bench card: black on white, large on a small screen, sparing of ink. */
final class CardStyle {
  // No sign in it that an XML writer would escape: within a style element HTML reads none back.
  private static final String SHEET =
      """

      * { box-sizing: border-box; }
      body { margin: 0 auto; max-width: 60rem; padding: 1rem; color: #000; background: #fff;
        font: 1.15rem/1.35 'Liberation Sans', Arial, Helvetica, sans-serif; }
      h2 { font-size: 1.5rem; margin: 1rem 0 .5rem; }
      h3 { font-size: 1.1rem; margin: .8rem 0 .2rem; }
      p { margin: .15rem 0; }
      table { border-collapse: collapse; width: 100%; }
      th { text-align: left; vertical-align: top; padding: .2rem .8rem .2rem 0; white-space: nowrap; }
      td { vertical-align: top; padding: .2rem .8rem .2rem 0; }
      .entries td { width: 100%; }
      tr { border-top: 1px solid #000; }
      .cut { font-size: 1.5rem; font-weight: bold; }
      .from { font-weight: bold; margin-top: 1rem; }
      .figures th { font-weight: normal; white-space: normal; }
      .cautions { list-style: none; padding: 0; }
      .cautions li { border-left: .3rem solid #000; padding-left: .6rem; margin: .4rem 0; }
      .steps { margin: 0; padding-left: 1.2rem; }
      .bars { display: flex; flex-wrap: wrap; gap: 0 1rem; }
      figure { margin: .5rem 0; }
      img { max-width: 100%; height: auto; display: block; }
      summary { font-size: 1.2rem; font-weight: bold; padding: .8rem 0; cursor: pointer; }
      details { border-top: 2px solid #000; border-bottom: 2px solid #000; margin: 1rem 0; }
      @media (max-width: 40rem) {
        .entries th, .entries td { display: block; padding-right: 0; }
        .entries th { padding-bottom: 0; }
        .entries td { border: 0; padding-top: 0; }
      }
      @page { size: PAPER; margin: 6mm 12mm; }
      @page upright { margin: 0; }
      @page lying { size: PAPER landscape; margin: 0; }
      @media print {
        body { max-width: none; padding: 0; font-size: LETTERS; line-height: 1.08; }
        h2 { font-size: 14pt; margin: 0 0 1mm; }
        h3 { font-size: 10pt; margin: 2mm 0 0; break-after: avoid; }
        .screen { display: none; }
        .cut { font-size: 14pt; }
        p { margin: 0; }
        .front { break-after: page; break-inside: avoid; }
        th, td { padding-top: 0; padding-bottom: .2mm; }
        tr { border-top: .1mm solid #000; break-inside: avoid; }
        .cautions li { margin: .3mm 0; }
        .figures th, .figures td { padding-top: .4mm; }
        .cautions, .bars figure { margin: 1mm 0; }
        .bars figcaption { display: none; }
        figcaption { font-size: 9pt; }
        img { max-width: none; }
        .sheet { margin: 0; break-before: page; break-after: page; break-inside: avoid; }
        .upright { page: upright; }
        .lying { page: lying; }
        .back { border: 0; break-before: page; break-after: page; margin: 0; font-size: 8pt; }
        .back h3 { font-size: 8pt; }
        .back .steps { columns: 2; }
        summary { list-style: none; padding: 0; }
        details::details-content { content-visibility: visible; display: block; }
        .cuts figure { break-inside: avoid; }
      }
      """;

  private CardStyle() {}

  /**
   * The style sheet for A4; for Letter, which is shorter, smaller letters keep a front on a page.
   */
  static String of(boolean isLetter) {
    return SHEET
        .replace("PAPER", isLetter ? "letter" : "A4")
        .replace("LETTERS", isLetter ? "9pt" : "9.5pt");
  }
}

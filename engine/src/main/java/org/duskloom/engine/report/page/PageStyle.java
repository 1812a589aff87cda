package org.duskloom.engine.report.page;

/** How the page looks: ink on paper, one column, nothing that hangs on colour alone. */
final class PageStyle {
    static final String TEXT = """
            :root { color-scheme: light; --ink: #1d1b16; --paper: #fcfaf4; --line: #cfc8b6; --quiet: #5d574a; --blue: #1f4e6b;
              --pale: #dbe4e8; --brick: #8a2d14; }
            * { box-sizing: border-box; }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 16px/1.5 Georgia, "Times New Roman", serif; }
            main { max-width: 58rem; margin: 0 auto; padding: 1.5rem 1rem 4rem; overflow-wrap: break-word; }
            h1 { font-size: 2rem; line-height: 1.15; margin: 0 0 .4rem; font-weight: normal; }
            h2 { font-size: 1.3rem; margin: 2.6rem 0 .6rem; padding-top: .5rem; border-top: 3px double var(--line);
              font-weight: normal; }
            h3 { font-size: 1.05rem; margin: 1.6rem 0 .4rem; }
            p { margin: .6rem 0; }
            .kind, .facts, figcaption, .x, .y, .limit, table, summary { font-family: system-ui, "Segoe UI", sans-serif; }
            .kind { margin: 0; color: var(--quiet); letter-spacing: .06em; font-size: .85rem; }
            .facts { color: var(--quiet); font-size: .9rem; }
            .verdict { border: 2px solid var(--blue); padding: .4rem 1rem; margin: 1.2rem 0; background: #fff; }
            .verdict.beyond { border: 4px double var(--brick); }
            .verdict .line { font-size: 1.35rem; margin: .4rem 0; }
            .beyond .line, .beyond strong { color: var(--brick); }
            .judged { font-size: 1.1rem; }
            .caution { border-left: 6px solid var(--line); padding-left: .8rem; }
            .wide { overflow-x: auto; margin: .8rem 0; }
            table { border-collapse: collapse; font-size: .86rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
            th, td { padding: .3rem .9rem .3rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); }
            thead th { color: var(--quiet); font-weight: normal; border-bottom: 2px solid var(--ink); white-space: nowrap; }
            tbody th { font-weight: 600; white-space: nowrap; }
            td { min-width: 3.5rem; max-width: 26rem; }
            figure { margin: 1.4rem 0; }
            figcaption { font-size: .9rem; margin-bottom: .5rem; }
            .moments { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: .4rem; }
            .moments img { display: block; width: 100%; height: auto; border: 1px solid var(--line); break-inside: avoid; }
            .plot { position: relative; height: 11rem; border: 1px solid var(--line); background: #fff; overflow: hidden; }
            .plot svg { display: block; width: 100%; height: 100%; }
            .plot path, .plot line { vector-effect: non-scaling-stroke; }
            .area { fill: var(--pale); }
            .curve { fill: none; stroke: var(--blue); stroke-width: 1.5; }
            .hard { stroke: var(--brick); stroke-width: 2; }
            .soft { stroke: var(--brick); stroke-width: 1.5; stroke-dasharray: 7 4; }
            .tick { stroke: var(--ink); stroke-width: 3; }
            .y, .limit { position: absolute; left: .3rem; font-size: .75rem; line-height: 1.2; padding: 0 .25rem;
              background: rgba(255, 255, 255, .8); }
            .y.low { bottom: 0; }
            .limit { left: auto; right: .3rem; color: var(--brick); transform: translateY(-105%); }
            .x { display: flex; justify-content: space-between; font-size: .75rem; color: var(--quiet); }
            .rows { border-top: 1px solid var(--line); }
            .row { display: grid; grid-template-columns: minmax(4rem, 9rem) 1fr; gap: .6rem; align-items: center;
              border-bottom: 1px solid var(--line); font: .8rem/1.2 system-ui, sans-serif; break-inside: avoid; }
            .row svg { display: block; width: 100%; height: 1.7rem; }
            .light { fill: var(--blue); }
            summary { cursor: pointer; font-size: .85rem; color: var(--blue); }
            summary:focus-visible, .wide:focus-visible { outline: 3px solid var(--blue); outline-offset: 2px; }
            @media (max-width: 30rem) { h1 { font-size: 1.6rem; } .row { grid-template-columns: 5.5rem 1fr; }
              tbody th { white-space: normal; min-width: 5rem; } .note { min-width: 15rem; } }
            @page { size: A4; margin: 15mm; }
            @media print {
              body { background: #fff; font-size: 10.5pt; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
              main { max-width: none; padding: 0; }
              figure, tr, .verdict, .caution { break-inside: avoid; }
              h2, h3 { break-after: avoid; }
              .wide { overflow: visible; }
              table { font-size: 8pt; }
              th, tbody th { white-space: normal; }
              .plot { height: 42mm; }
            }
            """;

    private PageStyle() {}
}

using System.Globalization;
using System.Text;
using Pattress.Tests.Published;
using Pattress.Walls;

namespace Pattress.Tests.Walls;

/// <summary>docs/theory/rates.md is the table of every assumed rate, made from the data; this holds it up to date.</summary>
public class RatesPageTests
{
    private static string Page => Path.Combine(ValidationPage.Root(), "docs", "theory", "rates.md");

    [Fact]
    public void The_page_has_every_rate_as_the_data_has_it() => Assert.Equal(Text(), File.ReadAllText(Page).ReplaceLineEndings("\n"));

    /// <summary>Writes the page anew; on demand, since it changes the working tree.</summary>
    [Fact(Explicit = true)]
    public void Write() => File.WriteAllText(Page, Text());

    private static string Text()
    {
        var text = new StringBuilder("""
            # Every assumed rate

            What the wall and support models assume, one row each, from `data/walls/rates.csv` and `data/walls/line_priors.csv`. Nobody has
            measured these on real houses as far as we know: each is a default that can be changed, and taps and magnets are re-estimated
            from what the drill finds. The tables of words (`likelihoods.csv`, `hole_feel.csv`) and of priors by age and neighbour
            (`priors.csv`) are assumed throughout and stand in `data/walls/`. A test writes this page from the data and compares.

            | name | value | unit | sensible | what | source |
            |---|---|---|---|---|---|

            """.ReplaceLineEndings("\n"));
        foreach (var r in RateTable.All) Row(text, r.Name, r.Value, r.Unit, $"{Number(r.Low)} to {Number(r.High)}", r.What, r.Source);
        foreach (var r in CsvTable.FromEmbedded("data/walls/line_priors.csv").Rows) Row(text, r["name"], r.Number("value"), r["unit"], "", r["what"], r["source"]);
        return text.ToString();
    }

    private static void Row(StringBuilder text, string name, double value, string unit, string sensible, string what, string source) =>
        text.Append(CultureInfo.InvariantCulture, $"| `{name}` | {Number(value)} | {(unit == "1" ? "" : unit)} | {sensible} | {what} | {source} |\n");

    private static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}

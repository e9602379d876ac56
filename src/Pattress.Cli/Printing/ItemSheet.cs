using Pattress.Jobs;
using Pattress.Jobs.Text;
using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>One thing to hang: verdict, why, its brackets, and what was assumed.</summary>
internal sealed class ItemSheet(Sheet sheet, Say say, bool working)
{
    private const int Indent = 3;

    public void Write(int number, ItemAnswer item)
    {
        if (number > 1) sheet.Gap();
        sheet.Item($"{number}.", new Text(Sheet.Clean(Title(item)), new Style(decoration: Decoration.Bold)));
        sheet.Paragraph(sheet.Verdict(item.Verdict), Indent, Say.Look(item.Verdict));
        sheet.Paragraph(say.Sentence(item.Why), Indent);
        for (int i = 0; i < item.Remedies.Count; i++) sheet.Item(i == 0 ? "→ " : sheet.T("or"), say.Sentence(item.Remedies[i]), Indent);
        if (item.Verdict == Verdict.CheckFirst) WritePlannedFor(item.Brackets);
        WriteBrackets(item.Brackets);
        if (item.Brackets.All(b => b.Fixing is not null)) sheet.Paragraph(Chance(item), Indent);
        foreach (var caution in item.Cautions) sheet.Item("-", say.Sentence(caution), Indent);
        WriteAssumed(item.Assumptions);
        if (working) foreach (var bracket in item.Brackets) new WorkingSheet(sheet, say).Write(bracket);
    }

    // What is ready says it in its reason.
    private void WritePlannedFor(IReadOnlyList<BracketAnswer> brackets)
    {
        var names = brackets.Where(b => b.Fixing is not null).Select(b => say.Name(b.BuildUp)).Distinct(StringComparer.Ordinal).ToList();
        if (names.Count > 0) sheet.Paragraph(sheet.T("planned_for", Said.Words(string.Join("; ", names))), Indent);
    }

    // Folded they are counted, never left out.
    private void WriteAssumed(IReadOnlyList<Actions.Assumption> assumptions)
    {
        if (assumptions.Count == 0) return;
        if (!working) sheet.Paragraph(sheet.Count("rests", assumptions.Count), Indent);
        else foreach (var assumed in assumptions) sheet.Item("-", sheet.T("assumed.one", Said.Words(say.Sentence(assumed))), Indent);
    }

    private string Title(ItemAnswer item) =>
        sheet.T("item", Said.Words(item.Id), Said.Words(item.Wall), Said.Mass(item.MassKg), Said.Words(item.Name.Length > 0 ? item.Name : say.Name(item.What)));

    private string Chance(ItemAnswer item) =>
        sheet.T("chance", Said.Plain(say.Settings.LifeYears), Said.Percent(item.ProbabilityOfFailure), Said.Percent(item.TargetProbability));

    private void WriteBrackets(IReadOnlyList<BracketAnswer> brackets)
    {
        if (brackets.Count == 0) return;
        var table = sheet.Table("bracket_at", "fixing", "hole.head", ">used", "governed_by").Widths(10, 21, 17, 5, 16);
        foreach (var bracket in brackets) table.Row(say.At(bracket.At), Fixing(bracket), Holes(bracket), Used(bracket), Governs(bracket));
        sheet.Write(table, Indent);
        foreach (string why in brackets.Where(b => b.Fixing is null).Select(b => say.Sentence(b.Why)).Distinct(StringComparer.Ordinal)) sheet.Paragraph(why, Indent);
        WriteNext(brackets);
    }

    private string Fixing(BracketAnswer bracket) => bracket.Fixing is { } fixing
        ? say.Counted(bracket.Count, fixing) + (bracket.IntoSupport ? Support(bracket) : "")
        : sheet.T("none_holds");

    private string Support(BracketAnswer bracket) => ", " + (bracket.Holes.Count == 0
        ? sheet.T("in_support")
        : sheet.T("in_support.chance", Said.Percent(bracket.Holes.Min(h => h.SupportProbability))));

    private string Holes(BracketAnswer bracket) => bracket.Fixing is null
        ? sheet.T("none")
        : string.Join("; ", bracket.Holes.Select(say.Hole).Distinct(StringComparer.Ordinal));

    private static string Used(BracketAnswer bracket) => bracket.Fixing is null ? "" : Shows.Percent(bracket.Utilisation);

    private string Governs(BracketAnswer bracket) => bracket.Fixing is null ? "" : say.Governs(bracket.Governs);

    private void WriteNext(IReadOnlyList<BracketAnswer> brackets)
    {
        foreach (var pair in brackets.Where(b => b is { Fixing: not null, NextKind: not null }).Select(b => (b.Fixing, b.NextKind)).Distinct())
            sheet.Paragraph(sheet.T("next_kind", Said.Name(pair.Fixing!), Said.Name(pair.NextKind!)), Indent);
    }
}

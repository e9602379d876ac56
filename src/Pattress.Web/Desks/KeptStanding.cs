using System.Globalization;
using Pattress.Jobs.Site;

namespace Pattress.Web.Desks;

/// <summary>How a job stood when it was kept, so that the opening page need not plan every job again.</summary>
public sealed record KeptStanding(int Ready, int CheckFirst, int NotHere, string Missing, int Count)
{
    public string Text => string.Join(',', Ready, CheckFirst, NotHere, Missing, Count);

    /// <summary>What is missing next, as a reason.</summary>
    public Reason Next => new(Missing, Said.Count(Count));

    public static KeptStanding Of(Standing s) =>
        new(s.Ready, s.CheckFirst, s.NotHere, s.Missing.Code, s.Missing.Values.Count > 0 ? (int)s.Missing.Values[0].Number : 0);

    public static KeptStanding? Read(string text) =>
        text.Split(',') is [var a, var b, var c, var missing, var n] ? new(Number(a), Number(b), Number(c), missing, Number(n)) : null;

    private static int Number(string text) => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out int n) ? n : 0;
}

using Pattress.Jobs.Proofs;

namespace Pattress.Jobs.Own;

/// <summary>A bracket that had come away when somebody came back: a failure in service, at no more than what it had to carry.</summary>
public static class LaterFailure
{
    /// <summary>
    /// The failure as a test: its load is the greatest characteristic pull on a fixing of that bracket, which it did not carry for good. Null where no fixing
    /// is planned there or nothing pulls at it.
    /// </summary>
    /// <param name="bracket">Index of the bracket, from 0.</param>
    /// <param name="id">An id for the record.</param>
    /// <param name="on">Date, ISO 8601.</param>
    public static OwnTest? Of(Job job, PlanAnswer plan, string item, int bracket, string id, string on)
    {
        if (plan.Items.FirstOrDefault(i => i.Id == item) is not { } answer || bracket < 0 || bracket >= answer.Brackets.Count || answer.Brackets[bracket].Fixing is not { } fixing) return null;
        double pull = ProofOf.Item(answer, job).Pulls.Where(p => p.Bracket == bracket).Select(p => p.ActionN).DefaultIfEmpty(0).Max();
        return pull < Least ? null : new() { Id = id, Fixing = fixing, Load = "tension", LoadN = Math.Round(pull, 1), Where = "site", Wall = answer.Wall, On = on, Note = answer.Name.Length > 0 ? answer.Name : item };
    }

    private const double Least = 0.1;
}

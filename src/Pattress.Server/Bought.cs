using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Solvers;

namespace Pattress.Server;

/// <summary>A job with its shopping, solved natively.</summary>
public sealed record Bought(Job Job, BuyAnswer Answer)
{
    /// <summary>The quote for it.</summary>
    public QuoteAnswer Quote => JobQuote.Of(Job, Answer.Plan, PlanData.Embedded);

    /// <summary>Reads a job, plans and buys it, or gives every problem of the document.</summary>
    public static async Task<Outcome<Bought>> Of(string json, CancellationToken stop)
    {
        var job = JobReader.Read(json);
        return job.Value is { } read
            ? Outcome<Bought>.Of(new(read, await JobBuyer.Buy(read, PlanData.Embedded, new ScipSolver(), stop)))
            : Outcome<Bought>.Refused(job.Problems);
    }
}

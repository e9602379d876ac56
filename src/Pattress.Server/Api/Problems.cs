using Microsoft.AspNetCore.Diagnostics;
using Pattress.Jobs;

namespace Pattress.Server.Api;

/// <summary>Refusals as problem details (RFC 9457). None tells of the inside of the program.</summary>
internal static class Problems
{
    public static Task Write(HttpContext context, int status, params IReadOnlyList<Problem> problems)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = ProblemJson.MediaType;
        return context.Response.WriteAsync(ProblemJson.Details(problems, status), context.RequestAborted);
    }

    /// <summary>Something that should not happen, or a body that is too long.</summary>
    public static Task Unexpected(HttpContext context)
    {
        int status = context.Features.Get<IExceptionHandlerFeature>()?.Error is BadHttpRequestException bad ? bad.StatusCode : 500;
        return Write(context, status, Of(status, context));
    }

    /// <summary>A status without a body, such as 404 or 405, gets one under <c>/api</c>.</summary>
    public static Task EmptyStatus(StatusCodeContext context)
    {
        var http = context.HttpContext;
        int status = http.Response.StatusCode;
        return http.Request.Path.StartsWithSegments("/api") ? Write(http, status, Of(status, http)) : Task.CompletedTask;
    }

    private static Problem Of(int status, HttpContext context) => status switch
    {
        404 => new("unknown_address", context.Request.Path, "", Endpoints.Addresses),
        405 => new("wrong_method", context.Request.Path, context.Request.Method, Endpoints.Addresses),
        413 => new("too_large", "$", "", $"at most {ServerOptions.MaxBodyBytes} bytes"),
        >= 500 => new("unexpected", context.Request.Path, "", "any documented question"),
        _ => new("bad_request", context.Request.Path, "", "a JSON document in UTF-8"),
    };
}
